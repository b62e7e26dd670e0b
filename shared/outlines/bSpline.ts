import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { problem, type Result, success } from "../result";
import { curveSide } from "./curveSide";
import type { Chain, Place } from "./outline";

/** A B-spline with or without weights. */
export interface BSpline {
  readonly degree: number;
  readonly knots: readonly number[];
  readonly controls: readonly Place[];
  /** As many as controls; all 1 for a spline without weights. */
  readonly weights: readonly number[];
}

export const highestDegree = 10;
/** Cubic pieces between two knots where the spline itself is no cubic. */
const piecesPerSpan = 16;

/**
 * A B-spline as cubic curves with its own places and slopes at their ends: exact for degrees up to 3 without weights.
 * Source: Piegl & Tiller (1997), The NURBS Book, algorithm A3.1 by de Boor's recurrence, eq. 4.8 for the slope with weights.
 */
export function splineChain(spline: BSpline): Result<Chain> {
  const { degree, knots, controls, weights } = spline;
  const count = controls.length;
  if (!(Number.isInteger(degree) && degree >= 1 && degree <= highestDegree)) {
    return problem(
      "outline",
      `a spline has ${Number.isNaN(degree) ? "no readable degree" : `degree ${degree}`}; it must be a whole number from 1 to ${highestDegree}`,
    );
  }
  if (count <= degree || knots.length !== count + degree + 1) {
    const found = `a spline of degree ${degree} has ${count} control points and ${knots.length} knots`;
    return problem(
      "outline",
      `${found}; it must have more control points than its degree, and as many knots as both and one more`,
    );
  }
  const isRising = knots.every((knot, i) => Number.isFinite(knot) && (i === 0 || knot >= knots[i - 1]));
  if (!isRising || !(knots[count] > knots[degree])) {
    return problem("outline", "the knots of a spline fall; they must be finite and rise");
  }
  const weighted = weights.some((weight) => weight !== weights[0]);
  if (!weights.every((weight) => weight > 0 && Number.isFinite(weight))) {
    return problem("outline", "a spline has a weight that is not above 0");
  }
  const pieces = weighted || degree > 3 ? piecesPerSpan : 1;
  const sides: OutlineSide[] = [];
  let end = controls[0];
  for (let k = degree; k < count; k++) {
    const [low, high] = [knots[k], knots[k + 1]];
    if (!(high > low)) continue;
    const step = (high - low) / pieces;
    for (let j = 0; j < pieces; j++) {
      const a = pointAt(spline, k, low + step * j);
      const b = pointAt(spline, k, j + 1 === pieces ? high : low + step * (j + 1));
      const [reach, back] = [step / 3, -step / 3];
      sides.push(curveSide(a.place, stepped(a.place, a.slope, reach), stepped(b.place, b.slope, back), b.place));
      end = b.place;
    }
  }
  return success({ sides, end });
}

function stepped(place: Place, slope: Place, step: number): Place {
  return [place[0] + step * slope[0], place[1] + step * slope[1]];
}

/** Place and slope by the parameter in the span between knots k and k + 1, in homogeneous coordinates by de Boor's recurrence. */
function pointAt({ degree, knots, controls, weights }: BSpline, k: number, t: number) {
  let points = Array.from({ length: degree + 1 }, (_, j) => {
    const i = k - degree + j;
    return [controls[i][0] * weights[i], controls[i][1] * weights[i], weights[i]];
  });
  let last = points;
  for (let r = 1; r <= degree; r++) {
    last = points;
    points = Array.from({ length: points.length - 1 }, (_, j) => {
      const i = k - degree + r + j;
      const share = (t - knots[i]) / (knots[i + degree - r + 1] - knots[i]);
      return last[j].map((value, axis) => value + share * (last[j + 1][axis] - value));
    });
  }
  const [x, y, w] = points[0];
  const rate = degree / (knots[k + 1] - knots[k]);
  const [dx, dy, dw] = last[0].map((value, axis) => rate * (last[1][axis] - value));
  const place: Place = [x / w, y / w];
  return { place, slope: [(dx - place[0] * dw) / w, (dy - place[1] * dw) / w] as Place };
}
