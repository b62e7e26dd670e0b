import { describe, expect, it } from "vitest";
import { sectionFlow, sourceVelocity } from "../../shared/engine/flow/sectionFlow";
import { surfaceOperator } from "../../shared/engine/flow/surfaceOperator";
import { largestDifference, nodesOf, polarAngles, unfolded, unwrap } from "./sections";

describe("surface-vorticity flow past a circle (closed form: q = 2 sin of the angle from the front)", () => {
  for (const panels of [16, 18, 40, 200]) {
    it(`gives 2 sin(angle) to 1e-12 with ${panels} nodes, folded and unfolded`, () => {
      const nodes = nodesOf({ family: "circle", diameter: 0.08 }, panels);
      const exact = polarAngles(nodes).map((phi) => -2 * Math.sin(phi));
      for (const each of [nodes, unfolded(nodes)]) {
        const flow = unwrap(sectionFlow(each, 0));
        expect(flow.operator.folded).toBe(each.mirrorSymmetric);
        expect(largestDifference(flow.streamVelocity, exact)).toBeLessThan(1e-12);
      }
    });
  }

  it("turns with the stream: -2 sin(angle - incidence), and a circulation adds Gamma / (pi D)", () => {
    const diameter = 0.08;
    const nodes = nodesOf({ family: "circle", diameter }, 24);
    for (const incidence of [-Math.PI, -0.4, 0.7, 2.9]) {
      const flow = unwrap(sectionFlow(nodes, incidence));
      const exact = polarAngles(nodes).map((phi) => -2 * Math.sin(phi - incidence));
      expect(largestDifference(flow.streamVelocity, exact)).toBeLessThan(1e-12);
      const around = flow.circulationVelocity ?? new Float64Array(0);
      expect(
        largestDifference(
          around.map((v) => v * Math.PI * diameter),
          new Float64Array(24).fill(1),
        ),
      ).toBeLessThan(1e-12);
    }
  });

  it("gives sin(n angle + phase) for a surface source of strength cos(n angle + phase), n below half the nodes, to 1e-12", () => {
    const panels = 40;
    const nodes = unfolded(nodesOf({ family: "circle", diameter: 3 }, panels));
    const flow = unwrap(sectionFlow(nodes, 0));
    const phi = polarAngles(nodes);
    for (let n = 1; n < panels / 2; n++) {
      const strengths = nodes.ds.map((ds, i) => ds * Math.cos(n * phi[i] + 0.4));
      const exact = phi.map((angle) => Math.sin(n * angle + 0.4));
      expect(largestDifference(sourceVelocity(flow, strengths), exact)).toBeLessThan(1e-12);
    }
  });

  it("gives no tangential velocity for a uniform source, and none of the outflow is lost inside", () => {
    const nodes = unfolded(nodesOf({ family: "circle", diameter: 3 }, 40));
    const flow = unwrap(sectionFlow(nodes, 0));
    expect(largestDifference(sourceVelocity(flow, nodes.ds), new Float64Array(40))).toBeLessThan(1e-12);
  });

  it("takes symmetric sources through the folded equation as through the full one", () => {
    const nodes = nodesOf({ family: "circle", diameter: 1 }, 40);
    const phi = polarAngles(nodes);
    const strengths = nodes.ds.map((ds, i) => ds * (Math.cos(3 * phi[i]) + 0.2 * Math.cos(7 * phi[i])));
    const exact = phi.map((angle) => Math.sin(3 * angle) + 0.2 * Math.sin(7 * angle));
    expect(largestDifference(sourceVelocity(unwrap(sectionFlow(nodes, 0)), strengths), exact)).toBeLessThan(1e-12);
  });

  it("throws when a folded operator is asked for a circulation, and refuses to fold an asymmetric section", () => {
    const nodes = nodesOf({ family: "circle", diameter: 1 }, 16);
    const operator = unwrap(surfaceOperator(nodes, true));
    expect(() => operator.solve(new Float64Array(16), 0.5)).toThrow(RangeError);
    const refused = surfaceOperator(unfolded(nodes), true);
    expect(refused.ok).toBe(false);
    if (!refused.ok) expect(refused.problem.code).toBe("asymmetric-section");
  });
});
