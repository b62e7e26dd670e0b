import { intervalAt } from "../../numerics/tableLookup";
import type { Contour, ContourBend } from "./contour";
import type { ContourPiece } from "./contourPiece";
import { noseArc } from "./noseArc";

/** Kink that is put down to rounding, rad. */
const roundedKink = 1e-7;

/**
 * A closed contour made of pieces that follow one another counter-clockwise, each ending where and as the next starts
 * (same point, same tangent). Arc 0 is moved to the nose.
 * Throws RangeError when the pieces do not join, since a family that builds such pieces is wrong.
 * @param largestKink angle between the tangents of two pieces that still counts as none, rad
 */
export function joinPieces(
  name: string,
  pieces: readonly ContourPiece[],
  mirrorSymmetric: boolean,
  largestKink = roundedKink,
): Contour {
  const starts = new Float64Array(pieces.length + 1);
  let area = 0;
  let momentX = 0;
  let momentY = 0;
  pieces.forEach((piece, i) => {
    starts[i + 1] = starts[i] + piece.length;
    area += piece.moments.area;
    momentX += piece.moments.x;
    momentY += piece.moments.y;
  });
  const perimeter = starts[pieces.length];
  checkJoints(name, pieces, perimeter, largestKink);
  const centroid: [number, number] = [momentX / area, mirrorSymmetric ? 0 : momentY / area];

  const locate = (arcFromStart: number) => {
    const i = intervalAt(starts, arcFromStart);
    return pieces[i].at(Math.min(arcFromStart - starts[i], pieces[i].length));
  };
  const nose = noseArc(locate, starts, centroid);
  const wrap = (arc: number) => {
    const wrapped = arc - perimeter * Math.floor(arc / perimeter);
    return wrapped < perimeter ? wrapped : 0;
  };
  const bends: ContourBend[] = pieces
    .flatMap((piece, i) => piece.bends.map((bend) => ({ ...bend, arc: wrap(starts[i] + bend.arc - nose) })))
    .sort((a, b) => a.arc - b.arc);
  return { name, perimeter, area, centroid, mirrorSymmetric, bends, at: (arc) => locate(wrap(arc + nose)) };
}

function checkJoints(name: string, pieces: readonly ContourPiece[], perimeter: number, largestKink: number): void {
  pieces.forEach((piece, i) => {
    const end = piece.at(piece.length);
    const start = pieces[(i + 1) % pieces.length].at(0);
    const gap = Math.hypot(end.x - start.x, end.y - start.y) / perimeter;
    const kink = Math.hypot(end.tangentX - start.tangentX, end.tangentY - start.tangentY);
    if (!(gap < 1e-9 && kink < largestKink)) {
      throw new RangeError(`${name}: piece ${i} ends ${gap} perimeters and ${kink} rad from the next; both must be 0.`);
    }
  });
}
