import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { faceOnDrag } from "../../shared/jobs/puck/drag/faceOnDrag";
import { orientationIndex } from "../../shared/jobs/puck/drag/orientationIndex";
import { tiltedForces } from "../../shared/jobs/puck/drag/tiltedDrag";
import { slidingFriction } from "../../shared/jobs/puck/motion/slidingFriction";
import { examplePuck, unwrap } from "./examplePuck";

const exactly = (value: number) => ({ low: value, expected: value, high: value });

describe("faceOnDrag(spec)", () => {
  // Munson et al., Fundamentals of Fluid Mechanics, fig. 9.20 (Re > 1e5); White, table 7.3 (from memory).
  it.each([
    [0.5, 1.1],
    [0.5, 1.15],
    [1, 0.93],
    [1, 0.9],
    [2, 0.83],
    [2, 0.85],
    [4, 0.85],
  ])("a sharp cylinder of length/diameter %d along its axis has the published %d within 6 %%", (ratio, published) => {
    const sharp = {
      ...examplePuck,
      thicknessMetres: 0.08 * ratio,
      edge: { kind: "radius", edgeRadiusMetres: 0 },
    } as const;
    const drag = unwrap(faceOnDrag(sharp));
    expect(Math.abs(drag.dragCoefficient.expected / published - 1)).toBeLessThan(0.06);
    expect(drag.referenceArea).toBeCloseTo(Math.PI * 0.04 ** 2, 12);
  });

  it("a thin disc has 1.17 (Hoerner 1965)", () => {
    const disc = { ...examplePuck, thicknessMetres: 0.001, edge: { kind: "radius", edgeRadiusMetres: 0 } } as const;
    expect(unwrap(faceOnDrag(disc)).dragCoefficient.expected).toBeCloseTo(1.17, 12);
  });

  it("rounding lowers the expected value and widens the band downwards only", () => {
    let last = 2;
    for (const edgeRadiusMetres of [0, 0.002, 0.004, 0.008, 0.012]) {
      const drag = unwrap(faceOnDrag({ ...examplePuck, edge: { kind: "radius", edgeRadiusMetres } })).dragCoefficient;
      expect(drag.expected).toBeLessThan(last);
      expect(drag.low).toBeLessThanOrEqual(drag.expected);
      expect(Math.abs(drag.high - 1.17)).toBeLessThan(0.01);
      last = drag.expected;
    }
  });
});

describe("tiltedForces(edgeOn, faceOn, tilt)", () => {
  it("meets the edge-on drag at 0 and the face-on drag at 90 degrees, without lift", () => {
    const edge = { low: 1, expected: 1.2, high: 1.5 };
    const face = { low: 4, expected: 5, high: 6 };
    const at0 = tiltedForces(edge, face, 0);
    const at90 = tiltedForces(edge, face, Math.PI / 2);
    for (const end of ["low", "expected", "high"] as const) {
      expect(at0.dragArea[end]).toBeCloseTo(edge[end], 12);
      expect(at90.dragArea[end]).toBeCloseTo(face[end], 12);
      expect(at0.liftArea[end]).toBeCloseTo(0, 12);
      expect(at90.liftArea[end]).toBeCloseTo(0, 12);
    }
  });

  it("a plate without edge-on drag has Rayleigh's (1876) normal force: 0.812 of the full one at 45 degrees", () => {
    const forces = tiltedForces(exactly(0), exactly(1), Math.PI / 4);
    expect(forces.normalArea.expected).toBeCloseTo(0.8119, 3);
  });

  it("keeps low <= expected <= high at every tilt", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: Math.PI / 2, noNaN: true }), (tilt) => {
        const { dragArea, liftArea } = tiltedForces(
          { low: 1, expected: 1.2, high: 1.5 },
          { low: 4, expected: 5, high: 6 },
          tilt,
        );
        for (const band of [dragArea, liftArea]) {
          expect(band.low).toBeLessThanOrEqual(band.expected + 1e-12);
          expect(band.expected).toBeLessThanOrEqual(band.high + 1e-12);
        }
      }),
    );
  });

  it("throws outside 0 to 90 degrees", () => {
    expect(() => tiltedForces(exactly(1), exactly(1), -0.1)).toThrow(RangeError);
  });
});

describe("orientationIndex(shares, candidate, baseline)", () => {
  const baseline = { upright: exactly(1), flat: exactly(2), faceOn: exactly(5) };

  it("+3 % in one orientation and -67 % in the other at equal shares is -32 % (common practice, no source)", () => {
    const candidate = { upright: exactly(1.03), flat: exactly(2 * 0.33), faceOn: exactly(5) };
    const result = unwrap(orientationIndex({ upright: 1, flat: 1, faceOn: 0 }, candidate, baseline));
    expect(result.changePercent.expected).toBeCloseTo(-32, 10);
    expect(result.index.low).toBeCloseTo(result.index.high, 12);
  });

  it("the same puck is 1, exactly so with common errors and only inside the band with independent ones", () => {
    const banded = { upright: { low: 0.8, expected: 1, high: 1.3 }, flat: exactly(2), faceOn: exactly(5) };
    const result = unwrap(orientationIndex({ upright: 2, flat: 1, faceOn: 1 }, banded, banded));
    expect(result.index.expected).toBeCloseTo(1, 12);
    expect(result.indexWithCommonError.low).toBeCloseTo(1, 12);
    expect(result.indexWithCommonError.high).toBeCloseTo(1, 12);
    expect(result.index.low).toBeLessThan(0.85);
    expect(result.index.high).toBeGreaterThan(1.3);
  });

  it("refuses shares that are all 0 or negative", () => {
    expect(orientationIndex({ upright: 0, flat: 0, faceOn: 0 }, baseline, baseline).ok).toBe(false);
    expect(orientationIndex({ upright: -1, flat: 3, faceOn: 0 }, baseline, baseline).ok).toBe(false);
  });
});

describe("slidingFriction(coefficient, spread)", () => {
  it("gives a band round the coefficient and refuses a spread that would go below 0", () => {
    expect(unwrap(slidingFriction(0.2, 0.05))).toEqual({ low: 0.15000000000000002, expected: 0.2, high: 0.25 });
    expect(slidingFriction(0.2, 0.3).ok).toBe(false);
    expect(slidingFriction(Number.NaN, 0).ok).toBe(false);
  });
});
