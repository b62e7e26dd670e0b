import type { Design } from "../../../shared/case/design";
import { publishedSmoothCylinderCurves } from "../../../shared/engine/reference/smoothCylinderCurve";
import type { PublishedPoints } from "../desk/dragCurveScene";
import type { MarkName } from "../style/markName";

const marks: readonly MarkName[] = ["circle", "square", "triangle", "diamond", "nabla", "hexagon"];

const smoothCylinder: readonly PublishedPoints[] = publishedSmoothCylinderCurves.map(({ name, points }, i) => ({
  source: name,
  mark: marks[i % marks.length],
  points: points.map(([reynolds, drag]) => [reynolds, drag, drag, drag] as const),
}));

/** Published drag of sections like a design's, to be laid beside its curve. */
export function publishedFor({ section }: Design): readonly PublishedPoints[] {
  return section.family === "circle" ? smoothCylinder : [];
}
