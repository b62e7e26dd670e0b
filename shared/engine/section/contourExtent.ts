import type { Contour } from "../geometry/contour";

const samples = 2000;

/**
 * Extent of a contour across the stream, m, from points at equal arc steps: good to about 1e-5 of it, for checks that
 * come before there are nodes.
 * @param incidence rad, positive nose up
 */
export function contourExtent(contour: Contour, incidence: number): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < samples; i++) {
    const point = contour.at((contour.perimeter * i) / samples);
    const across = point.y * Math.cos(incidence) - point.x * Math.sin(incidence);
    low = Math.min(low, across);
    high = Math.max(high, across);
  }
  return high - low;
}
