import type { Contour } from "../../shared/engine/geometry/contour";
import { gradeNodes } from "../../shared/engine/geometry/gradedNodes";
import type { Point } from "../../shared/engine/geometry/lineArcContour";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import type { Result } from "../../shared/result";

/** Points on a lobed closed curve about the origin, counter-clockwise, m. */
export function lobedPoints(count: number, lobe = 0.2, phase = 0.3): Point[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    const radius = 0.04 * (1 + lobe * Math.cos(3 * angle + phase));
    return [radius * Math.cos(angle), 0.75 * radius * Math.sin(angle)];
  });
}

/** At least one section of every family and every option. */
export const exampleSections: readonly SectionSpec[] = [
  { family: "circle", diameter: 0.08 },
  { family: "ellipse", length: 0.08, height: 0.03 },
  { family: "ellipse", length: 0.05, height: 1 },
  { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.0003 },
  { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 },
  { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.015 },
  { family: "superellipse", length: 0.08, height: 0.03, exponent: 2.5 },
  { family: "superellipse", length: 0.03, height: 0.08, exponent: 8 },
  { family: "stadium", length: 0.08, height: 0.03 },
  { family: "stadium", length: 0.03, height: 0.08 },
  {
    family: "bevelledRectangle",
    length: 0.08,
    height: 0.03,
    bevelLength: 0.006,
    bevelHeight: 0.004,
    cornerRadius: 0.001,
  },
  {
    family: "bevelledRectangle",
    length: 0.08,
    height: 0.03,
    bevelLength: 0.01,
    bevelHeight: 0.015,
    cornerRadius: 0.002,
  },
  { family: "dShape", length: 0.08, height: 0.03, noseLength: 0.015, cornerRadius: 0.002, flatSide: "rear" },
  { family: "dShape", length: 0.08, height: 0.03, noseLength: 0.07, cornerRadius: 0.01, flatSide: "front" },
  { family: "roundedPolygon", sides: 3, inscribedDiameter: 0.03, cornerRadius: 0.002, facing: "flat" },
  { family: "roundedPolygon", sides: 4, inscribedDiameter: 0.03, cornerRadius: 0.002, facing: "corner" },
  { family: "roundedPolygon", sides: 5, inscribedDiameter: 0.03, cornerRadius: 0.002, facing: "corner" },
  { family: "roundedPolygon", sides: 8, inscribedDiameter: 0.03, cornerRadius: 0.004, facing: "flat" },
  { family: "roundedTriangle", length: 0.08, height: 0.03, cornerRadius: 0.002, apex: "forward" },
  { family: "roundedTriangle", length: 0.04, height: 0.06, cornerRadius: 0.001, apex: "rearward" },
  { family: "freeContour", points: lobedPoints(60), name: "lobed section" },
  { family: "freeContour", points: lobedPoints(61, 0.15, 0).reverse() },
];

export function titleOf(spec: SectionSpec): string {
  const contour = buildContour(spec);
  return contour.ok ? contour.value.name : `${spec.family}: ${contour.problem.message}`;
}

/** The value of a result that is known to be good. */
export function goodValue<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.problem.code}: ${result.problem.message}`);
  return result.value;
}

export function contourOf(spec: SectionSpec): Contour {
  return goodValue(buildContour(spec));
}

export function nodesOf(spec: SectionSpec, count: number): SectionNodes {
  return goodValue(gradeNodes(contourOf(spec), count));
}

/** Sum over the nodes of an integrand times ds: the trapezoidal sum of its integral by arc length. */
export function nodeSum(nodes: SectionNodes, integrand: (i: number) => number): number {
  let sum = 0;
  for (let i = 0; i < nodes.count; i++) sum += integrand(i) * nodes.ds[i];
  return sum;
}

/** Area by Green's theorem on the nodes, m^2. */
export function nodeArea(nodes: SectionNodes): number {
  return nodeSum(nodes, (i) => (nodes.x[i] * nodes.tangentY[i] - nodes.y[i] * nodes.tangentX[i]) / 2);
}

/** (value - expected) / expected. */
export function relativeError(value: number, expected: number): number {
  return Math.abs(value - expected) / Math.abs(expected);
}
