import { periodicSpline } from "../engine/geometry/periodicSpline";
import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { apart, type Chain, type Place } from "./outline";

/**
 * An open cubic spline through points with the chord length as parameter, as cubic curves. Slopes at its ends are given,
 * or left free: the first and the last stretch are then parabolas.
 * Source: de Boor (1978), A Practical Guide to Splines, ch. IV: the slopes of the complete spline.
 * @param points two or more, no two neighbours the same
 * @param start, end unit vectors along the curve at its ends; null where free
 */
export function curveThrough(points: readonly Place[], start: Place | null = null, end: Place | null = null): Chain {
  const last = points.length - 1;
  const steps = Array.from({ length: last }, (_, i) => apart(points[i], points[i + 1]));
  const slopes = [0, 1].map((axis) => openSlopes(points, steps, axis as 0 | 1, start, end));
  const sides = steps.map(
    (step, i): OutlineSide =>
      hermite(points[i], points[i + 1], step, [slopes[0][i], slopes[1][i]], [slopes[0][i + 1], slopes[1][i + 1]]),
  );
  return { sides, end: points[last] };
}

/** A closed cubic spline through points, as cubic curves. */
export function closedCurveThrough(points: readonly Place[]): OutlineSide[] {
  const { path, knots } = periodicSpline(points);
  return points.map((from, i) => {
    const a = path(knots[i]);
    const next = (i + 1) % points.length;
    const b = path(knots[next]);
    return hermite(from, points[next], knots[i + 1] - knots[i], [a.dx, a.dy], [b.dx, b.dy]);
  });
}

function hermite(from: Place, to: Place, step: number, slope: Place, endSlope: Place): OutlineSide {
  return {
    from,
    controls: [
      [from[0] + (step / 3) * slope[0], from[1] + (step / 3) * slope[1]],
      [to[0] - (step / 3) * endSlope[0], to[1] - (step / 3) * endSlope[1]],
    ],
  };
}

/** Slopes at all points, from the three-term equations that make the second derivative continuous. */
function openSlopes(
  points: readonly Place[],
  steps: readonly number[],
  axis: 0 | 1,
  start: Place | null,
  end: Place | null,
): number[] {
  const last = points.length - 1;
  const chord = (i: number) => (points[i + 1][axis] - points[i][axis]) / steps[i];
  const below = new Float64Array(last + 1);
  const diagonal = new Float64Array(last + 1).fill(1);
  const above = new Float64Array(last + 1);
  const right = new Float64Array(last + 1);
  if (start !== null) right[0] = start[axis];
  else {
    above[0] = 1;
    right[0] = 2 * chord(0);
  }
  if (end !== null) right[last] = end[axis];
  else {
    below[last] = 1;
    right[last] = 2 * chord(last - 1);
  }
  for (let i = 1; i < last; i++) {
    below[i] = steps[i];
    diagonal[i] = 2 * (steps[i - 1] + steps[i]);
    above[i] = steps[i - 1];
    right[i] = 3 * (steps[i] * chord(i - 1) + steps[i - 1] * chord(i));
  }
  // Two free ends of a single stretch leave a straight line.
  if (last === 1 && start === null && end === null) return [chord(0), chord(0)];
  for (let i = 1; i <= last; i++) {
    const factor = below[i] / diagonal[i - 1];
    diagonal[i] -= factor * above[i - 1];
    right[i] -= factor * right[i - 1];
  }
  const slopes = Array<number>(last + 1).fill(0);
  for (let i = last; i >= 0; i--) slopes[i] = (right[i] - (i < last ? above[i] * slopes[i + 1] : 0)) / diagonal[i];
  return slopes;
}
