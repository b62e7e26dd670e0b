import { problem, type Result, success } from "../../result";
import type { Contour } from "./contour";
import { checkLengths, checkRadius, millimetres } from "./dimensionChecks";
import { joinPieces } from "./joinedContour";
import { grownPolygonPieces, type Point } from "./lineArcContour";
import type { RoundedPolygonSpec } from "./sectionSpec";

export const fewestSides = 3;
export const mostSides = 24;

/** A regular polygon with rounded corners, its inscribed circle about the origin. */
export function buildRoundedPolygon(spec: RoundedPolygonSpec): Result<Contour> {
  const { sides, inscribedDiameter, cornerRadius, facing } = spec;
  if (!(Number.isInteger(sides) && sides >= fewestSides && sides <= mostSides)) {
    const message = `sides is ${sides}; it must be a whole number from ${fewestSides} to ${mostSides}`;
    return problem("sides-out-of-range", message, "sides");
  }
  const limit = { value: inscribedDiameter / 2, words: "half the inscribed diameter" };
  const bad =
    checkLengths({ inscribedDiameter }) ?? checkRadius("cornerRadius", cornerRadius, inscribedDiameter, limit);
  if (bad) return { ok: false, problem: bad };
  if (facing !== "flat" && facing !== "corner") {
    return problem("unknown-facing", `facing is "${facing}"; use "flat" or "corner"`, "facing");
  }
  const inner = Math.max(inscribedDiameter / 2 - cornerRadius, 0) / Math.cos(Math.PI / sides);
  const first = facing === "flat" ? Math.PI - Math.PI / sides : Math.PI;
  const corners: Point[] = Array.from({ length: sides }, (_, i) => {
    const angle = first + (2 * Math.PI * i) / sides;
    return [inner * Math.cos(angle), inner * Math.sin(angle)];
  });
  const size = `inscribed diameter ${millimetres(inscribedDiameter)}, corner radius ${millimetres(cornerRadius)}`;
  const name = `rounded polygon with ${sides} sides, ${size}, ${facing} forward`;
  return success(joinPieces(name, grownPolygonPieces(corners, cornerRadius), true));
}
