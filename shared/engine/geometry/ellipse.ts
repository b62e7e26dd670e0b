import { type Result, success } from "../../result";
import type { Contour } from "./contour";
import type { Path } from "./contourPiece";
import { checkLengths, checkSlenderness, firstProblem } from "./dimensionChecks";
import { joinPieces } from "./joinedContour";
import { parametricPiece } from "./parametricContour";
import { extent } from "./sectionNames";
import type { EllipseSpec } from "./sectionSpec";

/** An ellipse about the origin, its axes along x and y. */
export function buildEllipse(spec: EllipseSpec): Result<Contour> {
  const { length, height } = spec;
  const bad = firstProblem(checkLengths({ length, height }), checkSlenderness(length, height));
  if (bad) return { ok: false, problem: bad };
  return success(ellipseContour(`ellipse ${extent(length, height)}`, length / 2, height / 2));
}

/** Ellipse walked from its nose by the eccentric angle, which is its natural parameter. Semi-axes a and b, m. */
export function ellipseContour(name: string, a: number, b: number): Contour {
  const piece = parametricPiece(
    ellipsePath(a, b),
    Float64Array.from({ length: 9 }, (_, i) => (i * Math.PI) / 4),
  );
  const contour = joinPieces(name, [piece], true);
  return { ...contour, naturalParameter: (t) => ({ arc: piece.arcAt(t), arcRate: piece.speedAt(t) }) };
}

/** Ellipse about the origin, t = 0 at (-a, 0), counter-clockwise. */
export function ellipsePath(a: number, b: number): Path {
  return (t) => {
    const cosine = Math.cos(t);
    const sine = Math.sin(t);
    return { x: -a * cosine, y: -b * sine, dx: a * sine, dy: -b * cosine, ddx: a * cosine, ddy: b * sine };
  };
}
