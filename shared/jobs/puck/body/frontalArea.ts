import { type Result, success } from "../../../result";
import { silhouetteMeridian } from "./outerShape";
import { checkOuterShape } from "./outerShapeCheck";
import type { PuckSpec } from "./puckSpec";
import { sectionArea } from "./solidFigures";

/** Shadow of a puck seen along its mid-plane, m^2; a problem where its outside cannot be made. */
export function frontalAreaEdgeOn(spec: PuckSpec): Result<number> {
  const outside = checkOuterShape(spec);
  return outside.ok ? success(sectionArea(silhouetteMeridian(spec))) : outside;
}
