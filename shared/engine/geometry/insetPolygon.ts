import type { Point } from "./lineArcContour";

/**
 * Largest equal radius by which all corners of a convex polygon can be rounded: the arcs at the ends of a side, each
 * taking radius * tan(turn / 2) of it, may meet but not overlap.
 * @param vertices counter-clockwise, m, no two neighbours the same
 */
export function largestCornerRadius(vertices: readonly Point[]): number {
  const count = vertices.length;
  const half = vertices.map((_, i) => Math.tan(turnAt(vertices, i) / 2));
  return Math.min(
    ...vertices.map(([x, y], i) => {
      const next = (i + 1) % count;
      return Math.hypot(vertices[next][0] - x, vertices[next][1] - y) / (half[i] + half[next]);
    }),
  );
}

/** The corners of a convex polygon whose sides have all moved inward by a distance, m. */
export function insetPolygon(vertices: readonly Point[], distance: number): Point[] {
  return vertices.map((corner, i) => {
    const [inX, inY] = direction(vertices, i - 1);
    const [outX, outY] = direction(vertices, i);
    // The inward normals are (-inY, inX) and (-outY, outX); moving along their sum keeps the distance to both sides.
    const scale = distance / (1 + inX * outX + inY * outY);
    return [corner[0] - scale * (inY + outY), corner[1] + scale * (inX + outX)];
  });
}

function direction(vertices: readonly Point[], i: number): Point {
  const count = vertices.length;
  const [x, y] = vertices[(i + count) % count];
  const [nextX, nextY] = vertices[(i + 1 + count) % count];
  const length = Math.hypot(nextX - x, nextY - y);
  return [(nextX - x) / length, (nextY - y) / length];
}

function turnAt(vertices: readonly Point[], i: number): number {
  const [inX, inY] = direction(vertices, i - 1);
  const [outX, outY] = direction(vertices, i);
  return Math.atan2(inX * outY - inY * outX, inX * outX + inY * outY);
}
