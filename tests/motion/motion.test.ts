import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tabulatedSectionDrag } from "../../shared/jobs/puck/drag/sectionDrag";
import { bandedMotion } from "../../shared/jobs/puck/motion/bandedMotion";
import { flickThroughWater } from "../../shared/jobs/puck/motion/flick";
import type { MotionBody } from "../../shared/jobs/puck/motion/motionBody";
import { sinkToFloor, terminalSpeeds } from "../../shared/jobs/puck/motion/sink";
import { slideToRest } from "../../shared/jobs/puck/motion/slideToRest";
import { unwrap } from "../puck/examplePuck";

const body: MotionBody = {
  mass: 1.25,
  addedMassEdgeOn: 0.04,
  addedMassFaceOn: 0.2,
  weightInFluid: 10.8,
  fluidDensity: 996.5,
};
const area = 0.0024 * 0.6;
const constant = () => area;
/** Constant-Cd length scale 2 M / (rho A), m. */
const lengthScale = (inertia: number) => (2 * inertia) / (body.fluidDensity * area);

/** A smooth cylinder's crisis in drag area, over speed. */
const crisis = tabulatedSectionDrag(
  [
    [1, 0.0014],
    [2, 0.0014],
    [3, 0.0004],
    [8, 0.0006],
  ].map(([reynolds, expected]) => ({ reynolds, low: 0.8 * expected, expected, high: 1.2 * expected, regime: null })),
);

describe("slideToRest(body, dragArea, friction, speed, sampling)", () => {
  it("constant Cd without friction coasts down as v0 / (1 + v0 t / L) over L ln(1 + v0 t / L), to 1e-8", () => {
    const run = unwrap(slideToRest(body, constant, 0, 5, { duration: 6, samples: 61 }));
    const L = lengthScale(body.mass + body.addedMassEdgeOn);
    run.time.forEach((t, i) => {
      expect(Math.abs(run.speed[i] / (5 / (1 + (5 * t) / L)) - 1)).toBeLessThan(1e-8);
      expect(Math.abs(run.distance[i] - L * Math.log(1 + (5 * t) / L))).toBeLessThan(1e-8);
    });
    expect(run.ended).toBe("time");
  });

  it("constant Cd with friction rests after L/2 ln(1 + v0^2 / vf^2), vf^2 = 2 F / (rho A), to 1e-8 m and s", () => {
    const mu = 0.2;
    const run = unwrap(slideToRest(body, constant, mu, 4, { duration: 20, samples: 11 }));
    const L = lengthScale(body.mass + body.addedMassEdgeOn);
    const F = mu * body.weightInFluid;
    const vf = Math.sqrt((2 * F) / (body.fluidDensity * area));
    expect(run.ended).toBe("rest");
    expect(Math.abs(run.distance[10] - (L / 2) * Math.log(1 + (4 / vf) ** 2))).toBeLessThan(1e-8);
    expect(Math.abs(run.time[10] - (L / vf) * Math.atan(4 / vf))).toBeLessThan(1e-8);
    expect(run.speed[10]).toBeLessThan(1e-9);
  });

  it("with friction alone it rests after v0^2 M / (2 F)", () => {
    const run = unwrap(slideToRest(body, () => 0, 0.3, 2, { duration: 20, samples: 5 }));
    const expected = (4 * (body.mass + body.addedMassEdgeOn)) / (2 * 0.3 * body.weightInFluid);
    expect(Math.abs(run.distance[4] - expected)).toBeLessThan(1e-9);
  });

  it("balances energy to 1e-6 through a drag crisis, for any speed and friction", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (speed, friction) => {
          const run = unwrap(
            slideToRest(body, (v) => crisis(v).expected, friction, speed, { duration: 10, samples: 3 }),
          );
          expect(run.energy.relativeResidual).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 30 },
    );
  });

  it("gives time and speed at a distance, and null where it does not get", () => {
    const run = unwrap(slideToRest(body, constant, 0, 5, { duration: 2, samples: 21, markDistances: [1, 1000] }));
    const L = lengthScale(body.mass + body.addedMassEdgeOn);
    expect(run.marks[0].speed).toBeCloseTo(5 * Math.exp(-1 / L), 8);
    expect(run.marks[1]).toEqual({ distance: 1000, time: null, speed: null });
  });

  it("carries bands through: more resistance, less way", () => {
    const mu = { low: 0.15, expected: 0.22, high: 0.3 };
    const runs = unwrap(
      bandedMotion((end) => slideToRest(body, (v) => crisis(v)[end], mu[end], 4, { duration: 20, samples: 5 })),
    );
    expect(runs.mostResistance.distance[4]).toBeLessThan(runs.expected.distance[4]);
    expect(runs.expected.distance[4]).toBeLessThan(runs.leastResistance.distance[4]);
  });

  it("refuses a floating puck, a negative friction and a speed that is not a number", () => {
    const sampling = { duration: 1, samples: 3 };
    expect(slideToRest({ ...body, weightInFluid: -1 }, constant, 0.2, 1, sampling).ok).toBe(false);
    expect(slideToRest(body, constant, -0.1, 1, sampling).ok).toBe(false);
    expect(slideToRest(body, constant, 0.2, Number.NaN, sampling).ok).toBe(false);
    expect(slideToRest(body, constant, 0.2, 1, { duration: 0, samples: 3 }).ok).toBe(false);
  });
});

describe("sinkToFloor(body, attitude, dragArea, depth, sampling)", () => {
  it("constant Cd sinks at vt tanh(a t / vt) over vt^2 / a ln cosh(a t / vt), to 1e-8", () => {
    const run = unwrap(sinkToFloor(body, "faceOn", constant, 1000, { duration: 4, samples: 41 }));
    const vt = Math.sqrt((2 * body.weightInFluid) / (body.fluidDensity * area));
    const a = body.weightInFluid / (body.mass + body.addedMassFaceOn);
    run.time.forEach((t, i) => {
      expect(Math.abs(run.speed[i] - vt * Math.tanh((a * t) / vt))).toBeLessThan(1e-8);
      expect(Math.abs(run.height[i] + (vt * vt * Math.log(Math.cosh((a * t) / vt))) / a)).toBeLessThan(1e-8);
    });
    expect(run.energy.relativeResidual).toBeLessThan(1e-8);
  });

  it("stops on the floor at the asked depth", () => {
    const run = unwrap(sinkToFloor(body, "edgeOn", constant, 2, { duration: 30, samples: 5 }));
    expect(run.ended).toBe("floor");
    expect(run.height[4]).toBeCloseTo(-2, 9);
  });
});

describe("terminalSpeeds(weight, density, dragArea)", () => {
  it("constant Cd has sqrt(2 W / (rho A)), once", () => {
    const speeds = terminalSpeeds(10.8, 996.5, constant);
    expect(speeds).toHaveLength(1);
    expect(speeds[0]).toBeCloseTo(Math.sqrt((2 * 10.8) / (996.5 * area)), 10);
  });

  it("a drag crisis gives three, the lowest being where a puck sinking from rest ends", () => {
    const drag = (v: number) => crisis(v).expected;
    const weight = 0.5 * 996.5 * 0.0012 * 2.1 ** 2;
    const speeds = terminalSpeeds(weight, 996.5, drag);
    expect(speeds).toHaveLength(3);
    const run = unwrap(
      sinkToFloor({ ...body, weightInFluid: weight }, "edgeOn", drag, 1e4, { duration: 60, samples: 3 }),
    );
    expect(run.speed[2]).toBeCloseTo(speeds[0], 6);
  });
});

describe("flickThroughWater(body, attitude, start, sampling)", () => {
  const start = { speed: 5, elevation: Math.PI / 6, height: 0.05, waterDepth: 3 };
  const sampling = { duration: 10, samples: 201 };

  it("without water it is the parabola: range and greatest height in closed form (added mass included)", () => {
    const dry = { ...body, fluidDensity: 0 };
    const run = unwrap(flickThroughWater(dry, { kind: "edgeAlongPath", dragArea: constant }, start, sampling));
    const a = body.weightInFluid / (body.mass + body.addedMassEdgeOn);
    const [vx, vz] = [5 * Math.cos(Math.PI / 6), 5 * Math.sin(Math.PI / 6)];
    const time = (vz + Math.sqrt(vz * vz + 2 * a * 0.05)) / a;
    expect(run.trajectory.ended).toBe("floor");
    expect(run.flightTime).toBeCloseTo(time, 9);
    expect(run.range).toBeCloseTo(vx * time, 8);
    expect(run.greatestHeight).toBeCloseTo(0.05 + (vz * vz) / (2 * a), 3);
  });

  it("straight up into little water reaches the surface", () => {
    const up = { ...start, elevation: Math.PI / 2, waterDepth: 0.3 };
    const run = unwrap(flickThroughWater(body, { kind: "edgeAlongPath", dragArea: constant }, up, sampling));
    expect(run.trajectory.ended).toBe("surface");
  });

  it("balances energy to 1e-6 in both attitudes", () => {
    const forceAreas = (v: number, tilt: number) => ({
      tangential: crisis(v).expected * Math.cos(tilt) ** 2,
      normal: (0.0055 * (4 + Math.PI) * Math.sin(tilt)) / (4 + Math.PI * Math.sin(tilt)),
    });
    const path = { kind: "edgeAlongPath", dragArea: (v: number) => crisis(v).expected } as const;
    for (const attitude of [path, { kind: "fixed", pitch: 0.1, forceAreas } as const]) {
      const run = unwrap(flickThroughWater(body, attitude, start, sampling));
      expect(run.trajectory.energy.relativeResidual).toBeLessThan(1e-6);
      expect(run.range).toBeGreaterThan(0.5);
    }
  });

  it("a flat puck held level falls slower than one that follows its path", () => {
    const level = { ...start, elevation: 0, height: 1 };
    const forceAreas = (_v: number, tilt: number) => ({
      tangential: area * Math.cos(tilt) ** 2,
      normal: 0.0055 * Math.sin(tilt),
    });
    const held = unwrap(flickThroughWater(body, { kind: "fixed", pitch: 0, forceAreas }, level, sampling));
    const free = unwrap(flickThroughWater(body, { kind: "edgeAlongPath", dragArea: constant }, level, sampling));
    expect(held.flightTime).toBeGreaterThan(free.flightTime);
  });

  it("refuses a start below the floor or above the surface", () => {
    const attitude = { kind: "edgeAlongPath", dragArea: constant } as const;
    expect(flickThroughWater(body, attitude, { ...start, height: 0 }, sampling).ok).toBe(false);
    expect(flickThroughWater(body, attitude, { ...start, height: 4 }, sampling).ok).toBe(false);
  });
});
