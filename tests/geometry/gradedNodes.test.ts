import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gradeNodes } from "../../shared/engine/geometry/gradedNodes";
import { nodeDensity } from "../../shared/engine/geometry/gradingMap";
import { panelCountForSection } from "../../shared/engine/geometry/panelCountForSection";
import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import {
  contourOf,
  exampleSections,
  goodValue,
  lobedPoints,
  nodeArea,
  nodeSum,
  nodesOf,
  relativeError,
  titleOf,
} from "./exampleSections";
import { mirrorNodes, rotateNodes, scaleNodes } from "./nodeTransforms";

const titled = exampleSections.map((spec) => [titleOf(spec), spec] as const);

/** Largest distance between corresponding nodes, and between their tangents, as parts of the perimeter and of 1. */
function difference(a: SectionNodes, b: SectionNodes): number {
  let largest = 0;
  for (let i = 0; i < a.count; i++) {
    largest = Math.max(
      largest,
      Math.hypot(a.x[i] - b.x[i], a.y[i] - b.y[i]) / a.perimeter,
      Math.hypot(a.tangentX[i] - b.tangentX[i], a.tangentY[i] - b.tangentY[i]),
      Math.abs(a.ds[i] - b.ds[i]) / a.perimeter,
      Math.abs(a.arc[i] - b.arc[i]) / a.perimeter,
    );
  }
  return largest;
}

describe("gradeNodes(contour, panelCount)", () => {
  it.each(titled)(
    "%s: arcs rise from 0, positions are at(arc), ds is the derivative of arc by node number",
    (_, spec) => {
      const contour = contourOf(spec);
      const nodes = goodValue(gradeNodes(contour, 400));
      expect(nodes.arc[0]).toBe(0);
      for (let i = 0; i < nodes.count; i++) {
        const end = i + 1 < nodes.count ? nodes.arc[i + 1] : nodes.perimeter;
        expect(end).toBeGreaterThan(nodes.arc[i]);
        const point = contour.at(nodes.arc[i]);
        expect(nodes.x[i]).toBe(point.x);
        expect(nodes.curvature[i]).toBe(point.curvature);
        if (i === 0 || i + 1 === nodes.count) continue;
        const central = (nodes.arc[i + 1] - nodes.arc[i - 1]) / 2;
        expect(relativeError(nodes.ds[i], central)).toBeLessThan(0.1);
      }
    },
  );

  it.each(titled)("%s: default panel count: sum of ds to 3e-6, area to 2e-4, neighbours within 2 : 1", (_, spec) => {
    const contour = contourOf(spec);
    const count = panelCountForSection(contour);
    expect(count).toBeGreaterThanOrEqual(160);
    expect(count).toBeLessThanOrEqual(600);
    expect(count % 2).toBe(0);
    const nodes = goodValue(gradeNodes(contour, count));
    expect(
      relativeError(
        nodeSum(nodes, () => 1),
        contour.perimeter,
      ),
    ).toBeLessThan(3e-6);
    expect(relativeError(nodeArea(nodes), contour.area)).toBeLessThan(2e-4);
    for (let i = 0; i < count; i++) {
      const ratio = nodes.ds[(i + 1) % count] / nodes.ds[i];
      expect(Math.max(ratio, 1 / ratio)).toBeLessThan(2.05);
      expect((nodes.ds[i] * count) / nodes.perimeter).toBeLessThan(1 / 0.3 + 0.01);
    }
  });

  it.each(titled)("%s: a mirror-symmetric section has mirror-symmetric nodes to 1e-12", (_, spec) => {
    const nodes = nodesOf(spec, 120);
    if (nodes.mirrorSymmetric) {
      const axis = nodes.centroid[1];
      const image = mirrorNodes({ ...nodes, y: nodes.y.map((y) => y - axis) });
      expect(difference({ ...nodes, y: nodes.y.map((y) => y - axis) }, image)).toBeLessThan(1e-12);
      expect(Math.abs(nodes.y[60] - axis)).toBeLessThan(1e-12 * nodes.perimeter);
    } else {
      expect(spec.family).toBe("freeContour");
    }
  });

  it("circle and ellipse: sums are spectrally accurate (area, perimeter and curvature at 64 nodes)", () => {
    const circle = nodesOf({ family: "circle", diameter: 1 }, 16);
    expect(
      relativeError(
        nodeSum(circle, () => 1),
        Math.PI,
      ),
    ).toBeLessThan(1e-14);
    expect(relativeError(nodeArea(circle), Math.PI / 4)).toBeLessThan(1e-14);
    const ellipse = nodesOf({ family: "ellipse", length: 1, height: 0.3 }, 64);
    expect(relativeError(nodeArea(ellipse), (Math.PI * 0.3) / 4)).toBeLessThan(1e-14);
    expect(
      relativeError(
        nodeSum(ellipse, () => 1),
        ellipse.perimeter,
      ),
    ).toBeLessThan(1e-10);
    expect(
      relativeError(
        nodeSum(ellipse, (i) => ellipse.curvature[i]),
        2 * Math.PI,
      ),
    ).toBeLessThan(1e-7);
  });

  it("superellipse with exponent 4, an analytic curve: area and curvature integral to 1e-12 at 200 nodes", () => {
    const nodes = nodesOf({ family: "superellipse", length: 0.08, height: 0.03, exponent: 4 }, 200);
    expect(relativeError(nodeArea(nodes), nodes.area)).toBeLessThan(1e-12);
    expect(
      relativeError(
        nodeSum(nodes, (i) => nodes.curvature[i]),
        2 * Math.PI,
      ),
    ).toBeLessThan(1e-12);
  });

  it("rounded rectangle, 200 panels: 10 nodes or more on every edge down to r/H = 0.01, and none of the sides starves", () => {
    for (const ratio of [0.01, 0.02, 0.05, 0.1, 0.3]) {
      const nodes = nodesOf({ family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.03 * ratio }, 200);
      const onEdges = nodes.curvature.filter((curvature) => curvature > 0).length;
      expect(onEdges / 4).toBeGreaterThanOrEqual(10);
      expect(Math.max(...nodes.ds)).toBeLessThan((3.4 * nodes.perimeter) / 200);
    }
  });

  it("sum of ds converges to the perimeter faster than any low order as panels are doubled", () => {
    const spec: SectionSpec = { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.0015 };
    const errors = [64, 128, 256].map((count) => {
      const nodes = nodesOf(spec, count);
      return relativeError(
        nodeSum(nodes, () => 1),
        nodes.perimeter,
      );
    });
    expect(errors[1]).toBeLessThan(errors[0] / 100);
    expect(errors[2]).toBeLessThan(1e-9);
  });

  it("nodeDensity: adds up to 1, and its integral matches it", () => {
    for (const spec of exampleSections) {
      const contour = contourOf(spec);
      const density = nodeDensity(contour);
      expect(density.upTo(0)).toBeCloseTo(0, 12);
      expect(density.upTo(contour.perimeter)).toBeCloseTo(1, 12);
      const h = 1e-7 * contour.perimeter;
      for (const part of [0.05, 0.31, 0.77]) {
        const arc = part * contour.perimeter;
        const slope = (density.upTo(arc + h) - density.upTo(arc - h)) / (2 * h);
        expect(relativeError(slope, density.at(arc))).toBeLessThan(1e-6);
      }
    }
  });

  it("a mirrored contour gives mirrored nodes to 1e-9", () => {
    const points = lobedPoints(60);
    const mirrored = points.map(([x, y]) => [x, -y] as const);
    const direct = mirrorNodes(nodesOf({ family: "freeContour", points }, 200));
    const fromMirrored = nodesOf({ family: "freeContour", points: mirrored }, 200);
    expect(difference(direct, fromMirrored)).toBeLessThan(1e-9);
  });

  it("points listed from another start or in the other direction give the same nodes to 1e-9", () => {
    const points = lobedPoints(60);
    const nodes = nodesOf({ family: "freeContour", points }, 200);
    const shifted = [...points.slice(23), ...points.slice(0, 23)];
    expect(difference(nodes, nodesOf({ family: "freeContour", points: shifted }, 200))).toBeLessThan(1e-9);
    const reversed = [...points].reverse();
    expect(difference(nodes, nodesOf({ family: "freeContour", points: reversed }, 200))).toBeLessThan(1e-9);
  });

  it("a scaled contour gives scaled nodes to 1e-11", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 50, noNaN: true }), (factor) => {
        const spec = (unit: number): SectionSpec => ({
          family: "bevelledRectangle",
          length: 0.08 * unit,
          height: 0.03 * unit,
          bevelLength: 0.006 * unit,
          bevelHeight: 0.009 * unit,
          cornerRadius: 0.001 * unit,
        });
        const scaled = scaleNodes(nodesOf(spec(1), 100), factor);
        expect(difference(scaled, nodesOf(spec(factor), 100))).toBeLessThan(1e-11);
      }),
      { numRuns: 20 },
    );
  });

  it("a D-shape with its flat in front is the rear one turned by half a turn", () => {
    const spec = (flatSide: "front" | "rear"): SectionSpec => ({
      family: "dShape",
      length: 0.06,
      height: 0.03,
      noseLength: 0.02,
      cornerRadius: 0.003,
      flatSide,
    });
    const turned = rotateNodes(nodesOf(spec("rear"), 200), Math.PI);
    const front = nodesOf(spec("front"), 200);
    const half = 100;
    for (let i = 0; i < 200; i++) {
      const j = (i + half) % 200;
      expect(Math.hypot(turned.x[j] - front.x[i], turned.y[j] - front.y[i])).toBeLessThan(1e-12);
      expect(Math.abs(turned.ds[j] - front.ds[i])).toBeLessThan(1e-12);
    }
  });

  it.each([14, 2002, 0, -20, 100.5, Number.NaN, 3, 1e6])("panelCount %s is refused with the allowed range", (count) => {
    const result = gradeNodes(contourOf({ family: "circle", diameter: 1 }), count);
    expect(result).toEqual({
      ok: false,
      problem: {
        code: "panel-count-out-of-range",
        message: `panel count is ${count}; it must be an even whole number from 16 to 2000`,
        field: "panelCount",
      },
    });
  });

  it("an odd panelCount is refused", () => {
    const result = gradeNodes(contourOf({ family: "circle", diameter: 1 }), 101);
    expect(result).toMatchObject({
      problem: { message: "panel count is 101; it must be even, for instance 102", field: "panelCount" },
    });
  });
});

describe("node transforms", () => {
  it.each(titled)("%s: mirrored and turned nodes keep length, area and a counter-clockwise walk", (_, spec) => {
    const nodes = nodesOf(spec, 120);
    for (const changed of [mirrorNodes(nodes), rotateNodes(nodes, 0.7)]) {
      expect(nodeArea(changed)).toBeCloseTo(nodeArea(nodes), 12);
      expect(changed.arc[0]).toBe(0);
      for (let i = 0; i < 120; i++) {
        const next = (i + 1) % 120;
        const forward =
          (changed.x[next] - changed.x[i]) * changed.tangentX[i] +
          (changed.y[next] - changed.y[i]) * changed.tangentY[i];
        expect(forward).toBeGreaterThan(0);
      }
    }
    expect(difference(mirrorNodes(mirrorNodes(nodes)), nodes)).toBeLessThan(1e-15);
    expect(difference(rotateNodes(rotateNodes(nodes, 0.7), -0.7), nodes)).toBeLessThan(1e-14);
  });

  it("scaleNodes and rotateNodes throw RangeError on factors and angles that are not usable", () => {
    const nodes = nodesOf({ family: "circle", diameter: 1 }, 16);
    expect(() => scaleNodes(nodes, 0)).toThrow(RangeError);
    expect(() => scaleNodes(nodes, Number.NaN)).toThrow(RangeError);
    expect(() => rotateNodes(nodes, Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});
