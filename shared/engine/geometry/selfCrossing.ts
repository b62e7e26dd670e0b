import Flatbush from "flatbush";
import { orient2d } from "robust-predicates";
import type { Point } from "./lineArcContour";

/**
 * The first two sides of a closed polygon that cross, touch or lie on each other (neighbours only when one runs back on
 * the other), or null when the polygon is simple. Exact in spite of rounding; candidates come from a spatial index, so
 * the time grows as n log n for ordinary contours.
 * @param points corners, shape [n], n >= 3; side i runs from point i to point i + 1, the last back to point 0
 */
export function selfCrossing(points: readonly Point[]): readonly [number, number] | null {
  const count = points.length;
  const index = new Flatbush(count);
  const box = (i: number) => {
    const [ax, ay] = points[i];
    const [bx, by] = points[(i + 1) % count];
    return [Math.min(ax, bx), Math.min(ay, by), Math.max(ax, bx), Math.max(ay, by)] as const;
  };
  for (let i = 0; i < count; i++) index.add(...box(i));
  index.finish();
  for (let i = 0; i < count; i++) {
    const next = (i + 1) % count;
    if (runsBack(points[i], points[next], points[(i + 2) % count])) return i < next ? [i, next] : [next, i];
    const others = index.search(...box(i), (j) => j > i && j !== next && (j + 1) % count !== i);
    for (const j of others.sort((a, b) => a - b)) {
      if (segmentsMeet(points[i], points[next], points[j], points[(j + 1) % count])) return [i, j];
    }
  }
  return null;
}

/** Whether the side b-c lies on the side a-b. */
function runsBack(a: Point, b: Point, c: Point): boolean {
  const forward = (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]);
  return forward < 0 && orient2d(...a, ...b, ...c) === 0;
}

/** Whether the segments a-b and c-d have a point in common, given that their bounding boxes do. */
function segmentsMeet(a: Point, b: Point, c: Point, d: Point): boolean {
  const straddles = (p: number, q: number) => (p <= 0 && q >= 0) || (p >= 0 && q <= 0);
  return (
    straddles(orient2d(...a, ...b, ...c), orient2d(...a, ...b, ...d)) &&
    straddles(orient2d(...c, ...d, ...a), orient2d(...c, ...d, ...b))
  );
}
