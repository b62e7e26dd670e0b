import { apart, type Place } from "./outline";

export interface FittedCircle {
  readonly centre: Place;
  readonly radius: number;
  /** Largest distance of a point from it. */
  readonly deviation: number;
}

/**
 * The circle nearest to some points, and how far they lie from it; null on a line.
 * Source: Kasa (1976), IEEE Trans. Instrum. Meas. 25, 8-14: least squares of x^2 + y^2 = 2 a x + 2 b y + c.
 */
export function fittedCircle(points: readonly Place[]): FittedCircle | null {
  const count = points.length;
  const [meanX, meanY] = [0, 1].map((axis) => points.reduce((sum, point) => sum + point[axis], 0) / count);
  let [xx, xy, yy, xs, ys, ss] = [0, 0, 0, 0, 0, 0];
  for (const point of points) {
    const [x, y] = [point[0] - meanX, point[1] - meanY];
    const square = x * x + y * y;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xs += x * square;
    ys += y * square;
    ss += square;
  }
  const determinant = 2 * (xx * yy - xy * xy);
  if (!(determinant > 0)) return null;
  const [a, b] = [(xs * yy - ys * xy) / determinant, (ys * xx - xs * xy) / determinant];
  const centre: Place = [meanX + a, meanY + b];
  const radius = Math.sqrt(a * a + b * b + ss / count);
  const deviation = points.reduce((most, point) => Math.max(most, Math.abs(apart(point, centre) - radius)), 0);
  return Number.isFinite(radius) ? { centre, radius, deviation } : null;
}

/** Largest distance of points from the line from the first to the last of them. */
export function lineDeviation(points: readonly Place[]): number {
  const [a, b] = [points[0], points[points.length - 1]];
  const length = apart(a, b);
  return points.reduce(
    (most, [x, y]) => Math.max(most, Math.abs((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / length),
    0,
  );
}

/** Tangent of a quarter of the turn of an arc about a centre, positive counter-clockwise; the arc goes the short way, or past a place. */
export function bulgeOf(from: Place, to: Place, centre: Place, isLeft: boolean): number {
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const end = Math.atan2(to[1] - centre[1], to[0] - centre[0]);
  const turn = isLeft ? end - start : start - end;
  const full = 2 * Math.PI;
  const positive = turn - full * Math.floor(turn / full);
  return (isLeft ? 1 : -1) * Math.tan(positive / 4);
}
