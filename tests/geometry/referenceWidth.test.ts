import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { referenceWidth } from "../../shared/engine/geometry/referenceWidth";
import { contourOf, exampleSections, nodesOf, relativeError, titleOf } from "./exampleSections";

const titled = exampleSections.map((spec) => [titleOf(spec), spec] as const);
const anyAngle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });

describe("referenceWidth(nodes, incidence)", () => {
  it("is the diameter of a circle at any incidence to 1e-10, with 64 nodes", () => {
    const nodes = nodesOf({ family: "circle", diameter: 0.08 }, 64);
    fc.assert(
      fc.property(anyAngle, (incidence) => {
        expect(relativeError(referenceWidth(nodes, incidence), 0.08)).toBeLessThan(1e-10);
      }),
    );
  });

  it("is 2 sqrt(a^2 sin^2 + b^2 cos^2) for an ellipse to 1e-9, with 200 nodes", () => {
    const nodes = nodesOf({ family: "ellipse", length: 0.08, height: 0.03 }, 200);
    fc.assert(
      fc.property(anyAngle, (incidence) => {
        const expected = Math.hypot(0.08 * Math.sin(incidence), 0.03 * Math.cos(incidence));
        expect(relativeError(referenceWidth(nodes, incidence), expected)).toBeLessThan(1e-9);
      }),
    );
  });

  it("is (L - 2r)|sin| + (H - 2r)|cos| + 2r for a rounded rectangle to 1e-10, joints of lines and arcs included", () => {
    const [L, H, r] = [0.08, 0.03, 0.003];
    const nodes = nodesOf({ family: "roundedRectangle", length: L, height: H, edgeRadius: r }, 160);
    fc.assert(
      fc.property(fc.oneof(anyAngle, fc.double({ min: -0.02, max: 0.02, noNaN: true })), (incidence) => {
        const expected =
          (L - 2 * r) * Math.abs(Math.sin(incidence)) + (H - 2 * r) * Math.abs(Math.cos(incidence)) + 2 * r;
        expect(relativeError(referenceWidth(nodes, incidence), expected)).toBeLessThan(1e-10);
      }),
      { numRuns: 300 },
    );
  });

  it.each(titled)("%s: agrees with 20000 points of the contour to 1e-6", (_, spec) => {
    const contour = contourOf(spec);
    const nodes = nodesOf(spec, 240);
    const points = Array.from({ length: 20000 }, (_, i) => contour.at((contour.perimeter * i) / 20000));
    for (const incidence of [0, 0.013, -0.4, 1.1, Math.PI / 2]) {
      let low = Number.POSITIVE_INFINITY;
      let high = Number.NEGATIVE_INFINITY;
      for (const { x, y } of points) {
        const across = -Math.sin(incidence) * x + Math.cos(incidence) * y;
        low = Math.min(low, across);
        high = Math.max(high, across);
      }
      expect(Math.abs(referenceWidth(nodes, incidence) - (high - low))).toBeLessThan(1e-6 * contour.perimeter);
    }
  });

  it("throws RangeError on an incidence that is not finite", () => {
    expect(() => referenceWidth(nodesOf({ family: "circle", diameter: 1 }, 16), Number.NaN)).toThrow(RangeError);
  });
});
