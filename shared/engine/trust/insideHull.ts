/**
 * Whether a point lies in the convex hull of others, its edge included: seen from the point, the others then leave no
 * gap wider than half a turn.
 * @param points [x, y], one or more
 */
export function insideHull(x: number, y: number, points: readonly (readonly [number, number])[]): boolean {
  const directions: number[] = [];
  for (const [px, py] of points) {
    if (Math.hypot(px - x, py - y) < coincident) return true;
    directions.push(Math.atan2(py - y, px - x));
  }
  directions.sort((a, b) => a - b);
  let widest = directions[0] + 2 * Math.PI - directions[directions.length - 1];
  for (let i = 1; i < directions.length; i++) widest = Math.max(widest, directions[i] - directions[i - 1]);
  return widest <= Math.PI + halfTurnTolerance;
}

const coincident = 1e-9;
const halfTurnTolerance = 1e-9;
