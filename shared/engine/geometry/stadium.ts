import { type Result, success } from "../../result";
import type { Contour } from "./contour";
import { checkLengths, checkSlenderness, firstProblem } from "./dimensionChecks";
import { roundedRectangleContour } from "./roundedRectangle";
import { extent } from "./sectionNames";
import type { StadiumSpec } from "./sectionSpec";

/** A rectangle about the origin with semicircles on its two shorter sides; a circle when length equals height. */
export function buildStadium(spec: StadiumSpec): Result<Contour> {
  const { length, height } = spec;
  const bad = firstProblem(checkLengths({ length, height }), checkSlenderness(length, height));
  if (bad) return { ok: false, problem: bad };
  const name = `stadium ${extent(length, height)}`;
  return success(roundedRectangleContour(name, length, height, Math.min(length, height) / 2));
}
