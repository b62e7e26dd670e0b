import { describe, expect, it } from "vitest";
import { sectionFlow } from "../../shared/engine/flow/sectionFlow";
import { nodesOf, unfolded, unwrap } from "./sections";

/**
 * Counter-clockwise surface speed of an ellipse with semi-axes a (along x) and b in a unit stream, at x = a cos t,
 * y = b sin t: [Gamma / (2 pi) - (a + b) sin(t - incidence)] / sqrt(a^2 sin^2 t + b^2 cos^2 t).
 * Conformal map of the circle, for instance Milne-Thomson, Theoretical Hydrodynamics, ch. 6.
 */
function ellipseSpeed(a: number, b: number, t: number, incidence: number, circulation: number): number {
  const stretch = Math.hypot(a * Math.sin(t), b * Math.cos(t));
  return (circulation / (2 * Math.PI) - (a + b) * Math.sin(t - incidence)) / stretch;
}

/** Largest error over the incidences and circulations, in units of the highest speed. */
function largestError(a: number, b: number, panels: number): number {
  const nodes = unfolded(nodesOf({ family: "ellipse", length: 2 * a, height: 2 * b }, panels));
  let largest = 0;
  for (const incidence of [0, 0.1, 0.7, Math.PI / 2, -2.3]) {
    const flow = unwrap(sectionFlow(nodes, incidence));
    for (const circulation of [0, 1.3, -4]) {
      let error = 0;
      let highest = 0;
      for (let i = 0; i < panels; i++) {
        const exact = ellipseSpeed(a, b, Math.atan2(nodes.y[i] / b, nodes.x[i] / a), incidence, circulation);
        const speed = flow.streamVelocity[i] + circulation * (flow.circulationVelocity?.[i] ?? Number.NaN);
        error = Math.max(error, Math.abs(speed - exact));
        highest = Math.max(highest, Math.abs(exact));
      }
      largest = Math.max(largest, error / highest);
    }
  }
  return largest;
}

describe("surface-vorticity flow past ellipses (closed form, any incidence and circulation)", () => {
  for (const [a, b, panels, tolerance] of [
    [1, 0.3, 40, 2e-10],
    [1, 0.3, 80, 1e-13],
    [1, 0.1, 160, 1e-12],
    [1, 0.5, 40, 1e-13],
    [1, 2, 40, 1e-13],
    [1, 3, 40, 2e-11],
    [0.04, 0.015, 80, 1e-13],
  ]) {
    it(`semi-axes ${a} x ${b}, ${panels} nodes: within ${tolerance} of the highest speed`, () => {
      expect(largestError(a, b, panels)).toBeLessThan(tolerance);
    });
  }

  it("1 : 0.3 at zero incidence: within 4e-11 with 40 nodes and 1e-13 with 80", () => {
    for (const [panels, tolerance] of [
      [40, 4e-11],
      [80, 1e-13],
    ]) {
      const nodes = nodesOf({ family: "ellipse", length: 2, height: 0.6 }, panels);
      const { streamVelocity } = unwrap(sectionFlow(nodes, 0));
      for (let i = 0; i < panels; i++) {
        const exact = ellipseSpeed(1, 0.3, Math.atan2(nodes.y[i] / 0.3, nodes.x[i]), 0, 0);
        expect(Math.abs(streamVelocity[i] - exact)).toBeLessThan(tolerance);
      }
    }
  });

  it("converges exponentially: each 20 nodes more on 1 : 0.3 cut the error at least a hundredfold", () => {
    const errors = [20, 40, 60].map((panels) => largestError(1, 0.3, panels));
    expect(errors[1]).toBeLessThan(errors[0] / 100);
    expect(errors[2]).toBeLessThan(errors[1] / 100);
  });
});
