import type { ContourPoint } from "./contour";

/** Stretches into which the contour is cut, at least, when looking for crossings of the axis. */
const fewestStretches = 256;

/**
 * Arc length of the nose, m: where the ray from the centroid against the stream (direction -x) last leaves the section.
 * @param at     contour point at an arc length from the start of the first piece, m
 * @param starts arc lengths at which the pieces start, and the perimeter, m
 */
export function noseArc(
  at: (arc: number) => ContourPoint,
  starts: Readonly<Float64Array>,
  centroid: readonly [number, number],
): number {
  const perimeter = starts[starts.length - 1];
  const heightAt = (arc: number) => at(arc < perimeter ? arc : 0).y - centroid[1];
  const stretchesPerPiece = Math.max(8, Math.ceil(fewestStretches / (starts.length - 1)));
  let best = 0;
  let bestX = Number.POSITIVE_INFINITY;
  for (let k = 0; k + 1 < starts.length; k++) {
    for (let j = 0; j < stretchesPerPiece; j++) {
      const step = (starts[k + 1] - starts[k]) / stretchesPerPiece;
      const start = starts[k] + step * j;
      const end = starts[k] + step * (j + 1);
      if (!(heightAt(start) > 0 && heightAt(end) <= 0)) continue;
      const arc = crossing(heightAt, start, end);
      const { x } = at(arc < perimeter ? arc : 0);
      if (x < bestX) {
        bestX = x;
        best = arc;
      }
    }
  }
  return best < perimeter ? best : 0;
}

/** Where a function falls through zero between a and b: bisection down to neighbouring numbers. */
function crossing(f: (arc: number) => number, a: number, b: number): number {
  let left = a;
  let right = b;
  for (;;) {
    const middle = (left + right) / 2;
    if (!(middle > left && middle < right)) return right;
    const value = f(middle);
    if (value === 0) return middle;
    if (value > 0) left = middle;
    else right = middle;
  }
}
