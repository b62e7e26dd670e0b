import { type Result, success } from "../../result";
import type { Contour } from "./contour";
import { checkLengths, checkRadius, checkSlenderness, firstProblem, halfSmaller, millimetres } from "./dimensionChecks";
import { joinPieces } from "./joinedContour";
import { grownPolygonPieces, type Point } from "./lineArcContour";
import { extent } from "./sectionNames";
import type { RoundedRectangleSpec } from "./sectionSpec";

/** A rectangle about the origin with four equally rounded edges. */
export function buildRoundedRectangle(spec: RoundedRectangleSpec): Result<Contour> {
  const { length, height, edgeRadius } = spec;
  const bad = firstProblem(
    checkLengths({ length, height }),
    checkSlenderness(length, height),
    checkRadius("edgeRadius", edgeRadius, Math.min(length, height), halfSmaller(length, height)),
  );
  if (bad) return { ok: false, problem: bad };
  const name = `rounded rectangle ${extent(length, height)}, edge radius ${millimetres(edgeRadius)}`;
  return success(roundedRectangleContour(name, length, height, edgeRadius));
}

/** Lines and arcs of a rounded rectangle; a radius of half a dimension leaves its straight sides out. All in m. */
export function roundedRectangleContour(name: string, length: number, height: number, radius: number): Contour {
  const x = Math.max(length / 2 - radius, 0);
  const y = Math.max(height / 2 - radius, 0);
  const corners: Point[] = [
    [-x, y],
    [-x, -y],
    [x, -y],
    [x, y],
  ];
  return joinPieces(name, grownPolygonPieces(corners, radius), true);
}
