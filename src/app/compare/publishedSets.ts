import {
  type PublishedDragCurve,
  publishedSmoothCylinderCurves,
} from "../../../shared/engine/reference/smoothCylinderCurve";
import type { MeasuredSetInputs } from "./compareInputs";

/** Below it the shear layers of the wake stay laminar, which the closure does not know. */
const lowestReynolds = 1.5e4;

/** The published curves that the page can lay beside a prediction. */
export const publishedCurves: readonly PublishedDragCurve[] = publishedSmoothCylinderCurves;

/** A published drag curve of a smooth cylinder as a measurement set. */
export function publishedSet({ name, source, remark, points }: PublishedDragCurve): MeasuredSetInputs {
  return {
    name,
    kind: "publishedCurve",
    source,
    note: remark,
    section: { family: "circle", name: "circular cylinder", diameterMetres: 0.1 },
    panelCount: 120,
    points: points
      .filter(([reynolds]) => reynolds >= lowestReynolds)
      .map(([reynoldsNumber, dragCoefficient]) => ({ reynoldsNumber, dragCoefficient })),
  };
}
