import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { sidePath } from "../engine/geometry/sidePath";
import type { Place } from "./outline";

const newtonSteps = 4;

/**
 * A curve through as few of some points, evenly picked, as keep all of them within a tolerance: points that are rounded
 * or measured would otherwise make it waver.
 * @param count how many stretches the points bound
 * @param pointAt the point at an index from 0 to count
 * @param through makes the sides through the points of some indices, rising from 0 to count
 * @param fewest  stretches
 */
export function thinnedCurve(
  count: number,
  pointAt: (index: number) => Place,
  through: (indices: readonly number[]) => readonly OutlineSide[],
  tolerance: number,
  fewest: number,
): readonly OutlineSide[] {
  let best: readonly OutlineSide[] | null = null;
  for (let stride = 1; stride === 1 || count / stride >= fewest; stride *= 2) {
    const stretches = Math.max(1, Math.round(count / stride));
    const indices = Array.from({ length: stretches + 1 }, (_, i) => Math.round((i * count) / stretches));
    const sides = through(indices);
    if (best === null || isWithin(sides, indices, pointAt, tolerance)) best = sides;
  }
  return best ?? [];
}

function isWithin(
  sides: readonly OutlineSide[],
  indices: readonly number[],
  pointAt: (index: number) => Place,
  tolerance: number,
): boolean {
  return sides.every((side, i) => {
    const [first, last] = [indices[i], indices[i + 1]];
    const path = sidePath(side, pointAt(last));
    for (let k = first + 1; k < last; k++) {
      const [x, y] = pointAt(k);
      let u = (k - first) / (last - first);
      for (let step = 0; step < newtonSteps; step++) {
        const here = path.at(u);
        u += ((x - here.x) * here.dx + (y - here.y) * here.dy) / (here.dx * here.dx + here.dy * here.dy);
        u = Math.min(1, Math.max(0, u));
      }
      const nearest = path.at(u);
      if (!(Math.hypot(nearest.x - x, nearest.y - y) <= tolerance)) return false;
    }
    return true;
  });
}
