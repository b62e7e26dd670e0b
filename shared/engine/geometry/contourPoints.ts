import { problem, type Result, success } from "../../result";
import { checkLengths, checkSlenderness, firstProblem, millimetres } from "./dimensionChecks";
import type { Point } from "./lineArcContour";
import { selfCrossing } from "./selfCrossing";

export const fewestPoints = 8;
export const mostPoints = 2000;
/** Neighbours closer than this fraction of the larger extent count as the same point. */
const sameDistance = 1e-9;
/** Smallest enclosed area as a fraction of the rectangle around the points. */
const smallestFill = 1e-3;

/**
 * Imported points made ready for a spline: a repeated first point is dropped and clockwise points are reversed. Fails on
 * too few or too many points, numbers that are not finite, coinciding neighbours, points on a line, a bad size and a
 * polygon that crosses itself.
 */
export function contourPoints(points: readonly Point[]): Result<{ points: Point[]; length: number; height: number }> {
  const fail = (code: string, message: string) => problem(code, message, "points");
  const broken = points.findIndex(([x, y]) => !(Number.isFinite(x) && Number.isFinite(y)));
  if (broken >= 0) {
    const message = `point ${broken + 1} is (${points[broken].join(", ")}); both coordinates must be finite numbers`;
    return fail("point-not-finite", message);
  }
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const length = Math.max(...xs) - Math.min(...xs);
  const height = Math.max(...ys) - Math.min(...ys);
  const negligible = sameDistance * Math.max(length, height);
  const same = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]) <= negligible;
  const closed = points.length > 1 && same(points[0], points[points.length - 1]);
  const open = closed ? points.slice(0, -1) : points;
  if (!(open.length >= fewestPoints && open.length <= mostPoints)) {
    const message = `the contour has ${open.length} points; it must have from ${fewestPoints} to ${mostPoints}`;
    return fail("point-count-out-of-range", message);
  }
  const double = open.findIndex((point, i) => same(point, open[(i + 1) % open.length]));
  if (double >= 0) {
    const second = ((double + 1) % open.length) + 1;
    return fail("duplicate-point", `points ${double + 1} and ${second} are both ${place(open[double])}; remove one`);
  }
  const area = polygonArea(open);
  if (!(Math.abs(area) > smallestFill * length * height)) {
    return fail("no-area", "the points enclose no area; they must go once round the section, in order");
  }
  const badSize = firstProblem(checkLengths({ length, height }), checkSlenderness(length, height));
  if (badSize) return fail(badSize.code, `the points' extent: ${badSize.message}`);
  const crossing = selfCrossing(open);
  if (crossing) {
    const [first, second] = crossing;
    const sides = `the side from ${place(open[first])} meets the side from ${place(open[second])}`;
    const message = `the contour crosses itself: ${sides} (points ${first + 1} and ${second + 1}); sort or remove points`;
    return fail("self-crossing", message);
  }
  return success({ points: area > 0 ? [...open] : [...open].reverse(), length, height });
}

/** A point as text in millimetres: "(12.5, -3) mm". */
export function place([x, y]: Point): string {
  return `(${millimetres(x).replace(" mm", "")}, ${millimetres(y).replace(" mm", "")}) mm`;
}

/** Area of a closed polygon, positive when counter-clockwise, m^2. */
function polygonArea(points: readonly Point[]): number {
  const [originX, originY] = points[0];
  return points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length];
    return sum + ((x - originX) * (nextY - originY) - (nextX - originX) * (y - originY)) / 2;
  }, 0);
}
