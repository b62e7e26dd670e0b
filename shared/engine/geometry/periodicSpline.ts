import { intervalAt } from "../../numerics/tableLookup";
import type { Path } from "./contourPiece";
import type { Point } from "./lineArcContour";

/**
 * Closed cubic spline through points, with cumulative chord length as parameter. Position, first and second derivative
 * are continuous everywhere, also where the last point meets the first, and so is the curvature.
 * Source: Ahlberg, Nilson & Walsh (1967), The Theory of Splines and Their Applications, sec. 2.1 (equations for the
 * second derivatives of a periodic spline), sec. 2.2 (solution of the cyclic system).
 * @param points shape [n], n >= 3, no two neighbours the same, the last not a repetition of the first, m
 * @returns path by chord length u, m, and the knots u, shape [n + 1], from 0 to the length of the closed polygon
 */
export function periodicSpline(points: readonly Point[]): { readonly path: Path; readonly knots: Float64Array } {
  const count = points.length;
  const x = Float64Array.from({ length: count + 1 }, (_, i) => points[i % count][0]);
  const y = Float64Array.from({ length: count + 1 }, (_, i) => points[i % count][1]);
  const knots = new Float64Array(count + 1);
  for (let i = 0; i < count; i++) knots[i + 1] = knots[i] + Math.hypot(x[i + 1] - x[i], y[i + 1] - y[i]);
  const steps = Float64Array.from({ length: count }, (_, i) => knots[i + 1] - knots[i]);
  const ddx = secondDerivatives(x, steps);
  const ddy = secondDerivatives(y, steps);

  const path: Path = (u) => {
    const low = intervalAt(knots, u);
    const h = steps[low];
    const b = (u - knots[low]) / h;
    const a = 1 - b;
    const next = low + 1;
    const cubicA = ((a * a * a - a) * h * h) / 6;
    const cubicB = ((b * b * b - b) * h * h) / 6;
    const slopeA = ((1 - 3 * a * a) * h) / 6;
    const slopeB = ((3 * b * b - 1) * h) / 6;
    return {
      x: a * x[low] + b * x[next] + cubicA * ddx[low] + cubicB * ddx[next],
      y: a * y[low] + b * y[next] + cubicA * ddy[low] + cubicB * ddy[next],
      dx: (x[next] - x[low]) / h + slopeA * ddx[low] + slopeB * ddx[next],
      dy: (y[next] - y[low]) / h + slopeA * ddy[low] + slopeB * ddy[next],
      ddx: a * ddx[low] + b * ddx[next],
      ddy: a * ddy[low] + b * ddy[next],
    };
  };
  return { path, knots };
}

/** Second derivatives at the knots, shape [n + 1], the last a copy of the first. */
function secondDerivatives(values: Readonly<Float64Array>, steps: Readonly<Float64Array>): Float64Array {
  const count = steps.length;
  const before = (i: number) => steps[(i + count - 1) % count];
  const slope = (i: number) => (values[i + 1] - values[i]) / steps[i];
  const right = Float64Array.from({ length: count }, (_, i) => 6 * (slope(i) - slope((i + count - 1) % count)));
  // The last unknown is taken out: the others depend on it linearly, and the last equation then gives it.
  const size = count - 1;
  const diagonal = Float64Array.from({ length: size }, (_, i) => 2 * (before(i) + steps[i]));
  const known = right.slice(0, size);
  const border = new Float64Array(size);
  border[0] = -before(0);
  border[size - 1] -= steps[size - 1];
  for (let i = 1; i < size; i++) {
    const factor = steps[i - 1] / diagonal[i - 1];
    diagonal[i] -= factor * steps[i - 1];
    known[i] -= factor * known[i - 1];
    border[i] -= factor * border[i - 1];
  }
  for (let i = size - 1; i >= 0; i--) {
    const coupling = i + 1 < size ? steps[i] : 0;
    known[i] = (known[i] - coupling * (known[i + 1] ?? 0)) / diagonal[i];
    border[i] = (border[i] - coupling * (border[i + 1] ?? 0)) / diagonal[i];
  }
  const last = count - 1;
  const own = 2 * (steps[last - 1] + steps[last]);
  const lastValue =
    (right[last] - steps[last - 1] * known[size - 1] - steps[last] * known[0]) /
    (own + steps[last - 1] * border[size - 1] + steps[last] * border[0]);
  const result = new Float64Array(count + 1);
  for (let i = 0; i < size; i++) result[i] = known[i] + lastValue * border[i];
  result[last] = lastValue;
  result[count] = result[0];
  return result;
}
