import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fieldVelocity } from "../../shared/engine/flow/fieldVelocity";
import { type SectionFlow, sectionFlow } from "../../shared/engine/flow/sectionFlow";
import { arcAtPosition, interpolateAtPosition } from "../../shared/engine/geometry/arcPosition";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { outflowStrengths } from "../../shared/engine/wake/outflow";
import { quadraticAt, surfaceVelocity, type WakeFlow, wakeFlow } from "../../shared/engine/wake/wakeFlow";
import { largestDifference, nodesOf, unfolded, unwrap } from "../flow/sections";

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);

const profile: SectionSpec = { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.01 };

describe("outflowStrengths", () => {
  const nodes = nodesOf(profile, 160);

  it("emit in proportion to the base arc, wherever between two nodes it starts and ends", () => {
    const perArc = (lower: number, upper: number) =>
      sum(outflowStrengths(nodes, lower, upper)) / (arcAtPosition(nodes, upper) - arcAtPosition(nodes, lower));
    const mean = perArc(40, 120);
    expect(mean).toBeGreaterThan(0.2);
    expect(mean).toBeLessThan(1);
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 75, noNaN: true }),
        fc.double({ min: 85, max: 155, noNaN: true }),
        (a, b) => {
          expect(perArc(a, b)).toBeCloseTo(mean, 11);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("blow outward on the base only: zero on the wetted side, never negative", () => {
    const strengths = outflowStrengths(nodes, 40.3, 119.6);
    strengths.forEach((strength, i) => {
      if (i < 40 || i > 120) expect(strength).toBe(0);
      else expect(strength).toBeGreaterThanOrEqual(-1e-18);
    });
    expect(strengths[80]).toBeGreaterThan(0);
  });

  it("change smoothly with the separation point: no jump when it passes a node or the middle between two", () => {
    for (const place of [40, 40.5]) {
      const before = outflowStrengths(nodes, place - 1e-7, 120);
      const after = outflowStrengths(nodes, place + 1e-7, 120);
      expect(largestDifference(before, after)).toBeLessThan(1e-9);
    }
  });

  it("throw when the base has no length, giving both positions", () => {
    expect(() => outflowStrengths(nodes, 90, 90)).toThrow(RangeError);
    expect(() => outflowStrengths(nodes, 90, 80)).toThrow(/90 to 80/);
  });
});

/** Speed / U at both separation points and the outflow through a wide circle around the section, in D. */
function conditionsMet(flow: SectionFlow, wake: WakeFlow, k: number) {
  const velocity = surfaceVelocity(wake, k);
  const amplitude = wake.amplitude[0] + k * wake.amplitude[1];
  const outflow = wake.outflow.map((strength, i) => (amplitude * strength) / flow.nodes.ds[i]);
  const radius = 5 * flow.nodes.perimeter;
  const count = 64;
  const points = Float64Array.from({ length: 2 * count }, (_, i) => {
    const angle = (2 * Math.PI * (i >> 1)) / count;
    return radius * (i % 2 === 0 ? Math.cos(angle) : Math.sin(angle));
  });
  const field = fieldVelocity(flow.nodes, { surfaceVelocity: velocity, outflow, incidence: flow.incidence }, points);
  let through = 0;
  let around = 0;
  for (let i = 0; i < count; i++) {
    const nx = points[2 * i] / radius;
    const ny = points[2 * i + 1] / radius;
    through += ((2 * Math.PI * radius) / count) * (field[2 * i] * nx + field[2 * i + 1] * ny);
    around += ((2 * Math.PI * radius) / count) * (field[2 * i + 1] * nx - field[2 * i] * ny);
  }
  return {
    lowerSpeed: interpolateAtPosition(velocity, wake.lower),
    upperSpeed: interpolateAtPosition(velocity, wake.upper),
    through: through / flow.referenceWidth,
    around,
  };
}

describe("wakeFlow", () => {
  it("holds the speed at k on both separation points of a symmetric wake, and its width is the outflow far away", () => {
    const nodes = nodesOf(profile, 160);
    const flow = unwrap(sectionFlow(nodes, 0));
    for (const lower of [20.3, 47, 61.7]) {
      const wake = unwrap(wakeFlow(flow, lower, 160 - lower));
      for (const k of [0.9, 1.4]) {
        const met = conditionsMet(flow, wake, k);
        expect(met.lowerSpeed).toBeCloseTo(k, 12);
        expect(met.upperSpeed).toBeCloseTo(-k, 12);
        expect(met.through).toBeCloseTo(wake.wakeWidth[0] + k * wake.wakeWidth[1], 10);
        expect(quadraticAt(wake.lift, k)).toBeCloseTo(0, 10);
      }
    }
  });

  it("two-sided, unequal separation: the speed is k on both sides, outflow and circulation are found far away", () => {
    const circle = unfolded(nodesOf({ family: "circle", diameter: 2 }, 160));
    const ellipse = nodesOf({ family: "ellipse", length: 1, height: 2 }, 160);
    for (const [nodes, incidence] of [
      [circle, 0],
      [ellipse, 0.3],
    ] as const) {
      const flow = unwrap(sectionFlow(nodes, incidence));
      fc.assert(
        fc.property(
          fc.double({ min: 33, max: 60, noNaN: true }),
          fc.double({ min: 100, max: 127, noNaN: true }),
          fc.double({ min: 0.9, max: 1.6, noNaN: true }),
          (lower, upper, k) => {
            const wake = unwrap(wakeFlow(flow, lower, upper));
            const met = conditionsMet(flow, wake, k);
            expect(met.lowerSpeed).toBeCloseTo(k, 11);
            expect(met.upperSpeed).toBeCloseTo(-k, 11);
            expect(met.through).toBeCloseTo(wake.wakeWidth[0] + k * wake.wakeWidth[1], 9);
            expect(met.around).toBeCloseTo(wake.circulation[0] + k * wake.circulation[1], 8);
          },
        ),
        { numRuns: 10 },
      );
    }
  });

  it("folded and full equations give the same symmetric wake, within 1e-9", () => {
    const nodes = nodesOf(profile, 160);
    const folded = unwrap(wakeFlow(unwrap(sectionFlow(nodes, 0)), 44.4, 115.6));
    const full = unwrap(wakeFlow(unwrap(sectionFlow(unfolded(nodes), 0)), 44.4, 115.6));
    for (const power of [0, 1, 2]) expect(full.pressureDrag[power]).toBeCloseTo(folded.pressureDrag[power], 9);
    for (const power of [0, 1]) expect(full.wakeWidth[power]).toBeCloseTo(folded.wakeWidth[power], 9);
    expect(full.circulation[0]).toBeCloseTo(0, 10);
  });

  it("mirrors: separation points exchanged, lift and circulation reversed, drag the same", () => {
    const flow = unwrap(sectionFlow(unfolded(nodesOf({ family: "circle", diameter: 1 }, 160)), 0));
    const wake = unwrap(wakeFlow(flow, 36.5, 101.2));
    const mirrored = unwrap(wakeFlow(flow, 160 - 101.2, 160 - 36.5));
    for (const k of [1, 1.45]) {
      expect(quadraticAt(mirrored.pressureDrag, k)).toBeCloseTo(quadraticAt(wake.pressureDrag, k), 11);
      expect(quadraticAt(mirrored.lift, k)).toBeCloseTo(-quadraticAt(wake.lift, k), 11);
    }
    expect(mirrored.circulation[1]).toBeCloseTo(-wake.circulation[1], 11);
    // Later separation below sucks downward on the lower side: the lift is negative there.
    expect(quadraticAt(mirrored.lift, 1.2)).toBeLessThan(0);
  });

  it("pressure drag agrees with the sum over the contour of the pressures it reports, within 0.5 % of D", () => {
    const nodes = nodesOf({ family: "circle", diameter: 1 }, 400);
    const flow = unwrap(sectionFlow(nodes, 0));
    const wake = unwrap(wakeFlow(flow, 95.37, 400 - 95.37));
    const k = 1.3;
    const velocity = surfaceVelocity(wake, k);
    let drag = 0;
    for (let i = 0; i < 400; i++) {
      const wetted = i <= wake.lower || i >= wake.upper;
      const pressure = wetted ? 1 - velocity[i] ** 2 : 1 - k * k;
      drag -= pressure * nodes.tangentY[i] * nodes.ds[i];
    }
    expect(Math.abs(drag - quadraticAt(wake.pressureDrag, k))).toBeLessThan(5e-3);
  });
});
