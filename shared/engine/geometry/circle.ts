import { type Result, success } from "../../result";
import type { Contour } from "./contour";
import { checkLengths, millimetres } from "./dimensionChecks";
import { ellipseContour } from "./ellipse";
import type { CircleSpec } from "./sectionSpec";

/** A circle about the origin. */
export function buildCircle(spec: CircleSpec): Result<Contour> {
  const { diameter } = spec;
  const bad = checkLengths({ diameter });
  if (bad) return { ok: false, problem: bad };
  return success(ellipseContour(`circle ${millimetres(diameter)}`, diameter / 2, diameter / 2));
}
