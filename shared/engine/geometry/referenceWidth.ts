import { findRoot } from "../../numerics/rootFinder";
import type { SectionNodes } from "./sectionNodes";

/** Curvatures at two neighbouring nodes that differ by more than this factor mean a joint of two curves between them. */
const jointRatio = 1.5;

/**
 * Reference width D, m: extent of a section across the stream.
 * The extremes of the contour lie between nodes; they are taken from the quintic that has the position, tangent and
 * curvature of the two nodes beside them, or, about a joint of lines and arcs, from two arcs that meet there.
 * @param incidence rad; the stream runs along (cos, sin) of it in the section's axes
 */
export function referenceWidth(nodes: SectionNodes, incidence: number): number {
  if (!Number.isFinite(incidence)) throw new RangeError(`incidence is ${incidence}; it must be a finite number.`);
  const acrossX = -Math.sin(incidence);
  const acrossY = Math.cos(incidence);
  return highestAlong(nodes, acrossX, acrossY) + highestAlong(nodes, -acrossX, -acrossY);
}

/** Largest height of the contour along the unit vector (directionX, directionY), m. */
export function highestAlong(nodes: SectionNodes, directionX: number, directionY: number): number {
  const { count, x, y, tangentX, tangentY, arc, perimeter, curvature } = nodes;
  const height = (i: number) => x[i] * directionX + y[i] * directionY;
  const slope = (i: number) => tangentX[i] * directionX + tangentY[i] * directionY;
  const bend = (i: number) => curvature[i] * (tangentX[i] * directionY - tangentY[i] * directionX);
  let best = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const next = i + 1 === count ? 0 : i + 1;
    best = Math.max(best, height(i));
    // Slopes of rounding size belong to a side that lies across the direction, whose nodes are extreme themselves.
    if (!(slope(i) > 1e-12 && slope(next) < -1e-12)) continue;
    const step = (next === 0 ? perimeter : arc[next]) - arc[i];
    const rising = Math.asin(Math.min(1, slope(i)));
    const falling = Math.asin(Math.min(1, -slope(next)));
    // Arc length of the second of two circular arcs that have the curvatures of the nodes and together turn as far.
    const second = (rising + falling - curvature[i] * step) / (curvature[next] - curvature[i]);
    if (differ(curvature[i], curvature[next]) && second > 0 && second < step) {
      const onFirst = curvature[i] * (step - second) >= rising;
      best = Math.max(
        best,
        onFirst
          ? height(i) + (1 - Math.cos(rising)) / curvature[i]
          : height(next) + (1 - Math.cos(falling)) / curvature[next],
      );
    } else {
      const start = [height(i), slope(i) * step, bend(i) * step * step] as const;
      const end = [height(next), slope(next) * step, bend(next) * step * step] as const;
      best = Math.max(best, quinticMaximum(start, end));
    }
  }
  return best;
}

function differ(a: number, b: number): boolean {
  return Math.max(a, b) > jointRatio * Math.min(a, b);
}

/** Largest value on [0, 1] of the quintic with given value, first and second derivative at 0 (rising) and 1 (falling). */
function quinticMaximum(
  [f0, d0, s0]: readonly [number, number, number],
  [f1, d1, s1]: readonly [number, number, number],
): number {
  const rise = f1 - f0 - d0 - s0 / 2;
  const turn = d1 - d0 - s0;
  const jump = s1 - s0;
  const c3 = 10 * rise - 4 * turn + jump / 2;
  const c4 = -15 * rise + 7 * turn - jump;
  const c5 = 6 * rise - 3 * turn + jump / 2;
  const u = findRoot((at) => d0 + at * (s0 + at * (3 * c3 + at * (4 * c4 + at * 5 * c5))), 0, 1, {
    endValues: [d0, d1],
  });
  return f0 + u * (d0 + u * (s0 / 2 + u * (c3 + u * (c4 + u * c5))));
}
