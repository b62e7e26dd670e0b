import { problem, type Result, success } from "../../result";
import type { Contour } from "./contour";
import { checkLengths, checkRadius, checkSlenderness, firstProblem, halfSmaller, millimetres } from "./dimensionChecks";
import { joinPieces } from "./joinedContour";
import { grownPolygonPieces, type Point } from "./lineArcContour";
import { extent } from "./sectionNames";
import type { RoundedTriangleSpec } from "./sectionSpec";

/** An isosceles triangle with rounded corners, the middle of its length at x = 0. */
export function buildRoundedTriangle(spec: RoundedTriangleSpec): Result<Contour> {
  const { length, height, cornerRadius, apex } = spec;
  const bad = firstProblem(
    checkLengths({ length, height }),
    checkSlenderness(length, height),
    checkRadius("cornerRadius", cornerRadius, Math.min(length, height), halfSmaller(length, height)),
  );
  if (bad) return { ok: false, problem: bad };
  if (apex !== "forward" && apex !== "rearward") {
    return problem("unknown-apex", `apex is "${apex}"; use "forward" or "rearward"`, "apex");
  }
  const sign = apex === "forward" ? 1 : -1;
  const x = Math.max(length / 2 - cornerRadius, 0);
  const y = Math.max(height / 2 - cornerRadius, 0);
  const corners: Point[] = [
    [-sign * x, 0],
    [sign * x, -sign * y],
    [sign * x, sign * y],
  ];
  const name = `rounded triangle ${extent(length, height)}, corner radius ${millimetres(cornerRadius)}, apex ${apex}`;
  return success(joinPieces(name, grownPolygonPieces(corners, cornerRadius), true));
}
