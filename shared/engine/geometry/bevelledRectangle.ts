import { type Result, success } from "../../result";
import type { Contour } from "./contour";
import { checkAtMost, checkLengths, checkRadius, checkSlenderness, firstProblem, millimetres } from "./dimensionChecks";
import { insetPolygon, largestCornerRadius } from "./insetPolygon";
import { joinPieces } from "./joinedContour";
import { grownPolygonPieces, type Point } from "./lineArcContour";
import { extent } from "./sectionNames";
import type { BevelledRectangleSpec } from "./sectionSpec";

/** A rectangle about the origin with four straight bevels and rounded corners. */
export function buildBevelledRectangle(spec: BevelledRectangleSpec): Result<Contour> {
  const { length, height, bevelLength, bevelHeight, cornerRadius } = spec;
  const badOutline = firstProblem(
    checkLengths({ length, height, bevelLength, bevelHeight }),
    checkSlenderness(length, height),
    checkAtMost("bevelLength", bevelLength, { value: length / 2, words: "half the length" }),
    checkAtMost("bevelHeight", bevelHeight, { value: height / 2, words: "half the height" }),
  );
  if (badOutline) return { ok: false, problem: badOutline };
  const corners = bevelledCorners(length, height, bevelLength, bevelHeight);
  const limit = { value: largestCornerRadius(corners), words: "the largest that fits between the bevels" };
  const badRadius = checkRadius("cornerRadius", cornerRadius, Math.min(length, height), limit);
  if (badRadius) return { ok: false, problem: badRadius };
  const bevel = `bevel ${extent(bevelLength, bevelHeight)}, corner radius ${millimetres(cornerRadius)}`;
  const pieces = grownPolygonPieces(insetPolygon(corners, cornerRadius), cornerRadius);
  return success(joinPieces(`bevelled rectangle ${extent(length, height)}, ${bevel}`, pieces, true));
}

/** Corners counter-clockwise from the upper left, without those that coincide where two bevels meet. */
function bevelledCorners(length: number, height: number, bevelLength: number, bevelHeight: number): Point[] {
  const x = length / 2;
  const y = height / 2;
  const topX = x - bevelLength > 1e-9 * length ? x - bevelLength : 0;
  const endY = y - bevelHeight > 1e-9 * height ? y - bevelHeight : 0;
  const corners: Point[] = [
    [-topX, y],
    [-x, endY],
    [-x, -endY],
    [-topX, -y],
    [topX, -y],
    [x, -endY],
    [x, endY],
    [topX, y],
  ];
  return corners.filter(([px, py], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length];
    return px !== nextX || py !== nextY;
  });
}
