import { EVD, Matrix, SVD } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { sectionFlow, sourceVelocity } from "../../shared/engine/flow/sectionFlow";
import { vorticityMatrix } from "../../shared/engine/flow/surfaceKernels";
import { surfaceOperator } from "../../shared/engine/flow/surfaceOperator";
import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { mirrorNodes, rotateNodes } from "../geometry/nodeTransforms";
import { largestDifference, nodesOf, unfolded, unwrap } from "./sections";

function libraryMatrix(nodes: SectionNodes): Matrix {
  const { count } = nodes;
  const { data } = vorticityMatrix(nodes);
  return new Matrix(Array.from({ length: count }, (_, i) => Array.from(data.subarray(i * count, (i + 1) * count))));
}

/** Magnitudes of the eigenvalues, rising. */
function eigenvalueMagnitudes(nodes: SectionNodes): number[] {
  const { realEigenvalues, imaginaryEigenvalues } = new EVD(libraryMatrix(nodes));
  return realEigenvalues.map((real, i) => Math.hypot(real, imaginaryEigenvalues[i])).sort((a, b) => a - b);
}

const square: SectionSpec = { family: "roundedRectangle", length: 1, height: 1, edgeRadius: 0.1 };
const puckProfile: SectionSpec = { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 };
const bluntD: SectionSpec = {
  family: "dShape",
  length: 1,
  height: 1,
  noseLength: 0.5,
  cornerRadius: 0.1,
  flatSide: "rear",
};

describe("the surface-vorticity operator", () => {
  it("has condition number 2 on a circle, with any number of nodes, and |eigenvalue| 1/2 and 1 only", () => {
    for (const panels of [16, 120]) {
      const nodes = nodesOf({ family: "circle", diameter: 7 }, panels);
      expect(new SVD(libraryMatrix(nodes)).condition).toBeCloseTo(2, 11);
      const magnitudes = eigenvalueMagnitudes(nodes);
      expect(magnitudes[0]).toBeCloseTo(0.5, 11);
      expect(magnitudes[panels - 2]).toBeCloseTo(0.5, 11);
      expect(magnitudes[panels - 1]).toBeCloseTo(1, 11);
    }
  });

  it("has the spectrum of the ellipse, (1 -+ ((a-b)/(a+b))^n) / 2 and 1 (Ahlfors 1952, Pacific J. Math. 2, 271)", () => {
    const nodes = nodesOf({ family: "ellipse", length: 2, height: 0.6 }, 80);
    const ratio = (1 - 0.3) / (1 + 0.3);
    const exact = [1];
    for (let n = 1; n < 40; n++) exact.push((1 - ratio ** n) / 2, (1 + ratio ** n) / 2);
    exact.sort((a, b) => a - b);
    const magnitudes = eigenvalueMagnitudes(nodes);
    for (let i = 0; i < 10; i++) {
      expect(magnitudes[i]).toBeCloseTo(exact[i], 10);
      expect(magnitudes[79 - i]).toBeCloseTo(exact[exact.length - 1 - i], 10);
    }
  });

  it("stays well conditioned when nodes are added: below 10 on a rounded square and on the profile of a puck", () => {
    for (const spec of [square, puckProfile]) {
      const [coarse, fine] = [60, 120].map((panels) => new SVD(libraryMatrix(nodesOf(spec, panels))).condition);
      expect(fine).toBeLessThan(10);
      expect(fine / coarse).toBeCloseTo(1, 1);
    }
  });

  it("folded to one side equals the full one on symmetric sections: stream and symmetric sources within 1e-11", () => {
    for (const spec of [square, puckProfile, bluntD, { family: "ellipse", length: 1, height: 2 } as const]) {
      const nodes = nodesOf(spec, 120);
      const folded = unwrap(sectionFlow(nodes, 0));
      const full = unwrap(sectionFlow(unfolded(nodes), 0));
      expect(folded.operator.folded).toBe(true);
      expect(full.operator.folded).toBe(false);
      expect(largestDifference(folded.streamVelocity, full.streamVelocity)).toBeLessThan(1e-11);
      const rear = nodes.ds.map((ds, i) => (i > 40 && i < 80 ? ds * Math.sin((Math.PI * (i - 40)) / 40) ** 2 : 0));
      expect(largestDifference(sourceVelocity(folded, rear), sourceVelocity(full, rear))).toBeLessThan(1e-11);
    }
  });

  it("by iteration above 640 unknowns equals the factored one on common nodes of a circle and an ellipse, within 1e-10", () => {
    for (const spec of [
      { family: "circle", diameter: 1 },
      { family: "ellipse", length: 1, height: 0.5 },
    ] as const) {
      const coarse = unwrap(sectionFlow(unfolded(nodesOf(spec, 340)), 0.3));
      const fine = unwrap(sectionFlow(unfolded(nodesOf(spec, 680)), 0.3));
      const common = coarse.streamVelocity.map((_, i) => fine.streamVelocity[2 * i]);
      expect(largestDifference(coarse.streamVelocity, common)).toBeLessThan(1e-10);
    }
  });

  it("prescribes the circulation: the surface velocity adds up to it, within 1e-12 on an ellipse and 0.2 % on corners", () => {
    for (const [spec, tolerance] of [
      [{ family: "ellipse", length: 1, height: 0.5 }, 1e-12],
      [puckProfile, 2e-3],
    ] as const) {
      const nodes = unfolded(nodesOf(spec, 120));
      const operator = unwrap(surfaceOperator(nodes, false));
      const onset = nodes.tangentX.map((tx, i) => Math.cos(0.4) * tx + Math.sin(0.4) * nodes.tangentY[i]);
      const velocity = operator.solve(onset, 0.7);
      const around = velocity.reduce((sum, v, i) => sum + v * nodes.ds[i], 0);
      expect(Math.abs(around / 0.7 - 1)).toBeLessThan(tolerance);
    }
  });

  it("mirrors with the section and the incidence, within 1e-11", () => {
    const spec: SectionSpec = {
      family: "roundedPolygon",
      sides: 5,
      inscribedDiameter: 1,
      cornerRadius: 0.1,
      facing: "flat",
    };
    const nodes = rotateNodes(nodesOf(spec, 100), 0.2);
    const flow = unwrap(sectionFlow(nodes, 0.3));
    const mirrored = unwrap(sectionFlow(mirrorNodes(nodes), -0.3));
    const expected = flow.streamVelocity.map((_, i) => -flow.streamVelocity[i === 0 ? 0 : nodes.count - i]);
    expect(largestDifference(mirrored.streamVelocity, expected)).toBeLessThan(1e-11);
  });

  it("turns with the section and the stream, within 1e-11", () => {
    const nodes = unfolded(nodesOf(puckProfile, 100));
    const flow = unwrap(sectionFlow(nodes, 0.3));
    const turned = unwrap(sectionFlow(rotateNodes(nodes, 0.5), 0.8));
    expect(largestDifference(turned.streamVelocity, flow.streamVelocity)).toBeLessThan(1e-11);
    expect(turned.referenceWidth).toBeCloseTo(flow.referenceWidth, 12);
  });
});

describe("rounded rectangles, whose curvature jumps where a line meets an arc", () => {
  const finePanels = 960;

  /** Root mean square differences of the surface speed from that of 960 nodes, in stream speeds, one for each panel count. */
  function rmsErrors(spec: SectionSpec, panelCounts: readonly number[]): number[] {
    const reference = unwrap(sectionFlow(nodesOf(spec, finePanels), 0)).streamVelocity;
    return panelCounts.map((panels) => {
      const nodes = nodesOf(spec, panels);
      const { streamVelocity } = unwrap(sectionFlow(nodes, 0));
      let sum = 0;
      for (let i = 0; i < panels; i++) {
        sum += (nodes.ds[i] / nodes.perimeter) * (streamVelocity[i] - reference[(i * finePanels) / panels]) ** 2;
      }
      return Math.sqrt(sum);
    });
  }

  for (const [length, height, edgeRadius] of [
    [1, 1, 0.05],
    [1, 1, 0.17],
    [0.08, 0.03, 0.0005],
    [0.08, 0.03, 0.006],
    [0.08, 0.03, 0.015],
  ]) {
    it(`${length} x ${height}, radius ${edgeRadius}: speed within 0.4 % RMS at 80 panels, 0.1 % at 160, 0.03 % at 480`, () => {
      const spec: SectionSpec = { family: "roundedRectangle", length, height, edgeRadius };
      const [coarse, medium, fine] = rmsErrors(spec, [80, 160, 480]);
      expect(coarse).toBeLessThan(4e-3);
      expect(medium).toBeLessThan(1e-3);
      expect(fine).toBeLessThan(3e-4);
    });
  }
});
