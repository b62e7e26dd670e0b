import { findRoot } from "../../numerics/rootFinder";
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
      const endValues: [number, number] = [heightAt(start), heightAt(end)];
      if (!(endValues[0] > 0 && endValues[1] <= 0)) continue;
      const arc = findRoot(heightAt, start, end, { endValues });
      const { x } = at(arc < perimeter ? arc : 0);
      if (x < bestX) {
        bestX = x;
        best = arc;
      }
    }
  }
  return best < perimeter ? best : 0;
}
