import Flatbush from "flatbush";
import type { Place } from "./outline";

/** How far some places lie from a closed polygon at most, and where. */
export interface Deviation {
  readonly distance: number;
  readonly at: Place;
}

/** A first width of the search, as a part of the polygon's mean side. */
const firstReach = 1;

/** The largest distance of places from a closed polygon, with a spatial index of its sides. */
export function largestDeviation(places: readonly Place[], polygon: readonly Place[]): Deviation {
  const count = polygon.length;
  const index = new Flatbush(count);
  let perimeter = 0;
  for (let i = 0; i < count; i++) {
    const [ax, ay] = polygon[i];
    const [bx, by] = polygon[(i + 1) % count];
    index.add(Math.min(ax, bx), Math.min(ay, by), Math.max(ax, bx), Math.max(ay, by));
    perimeter += Math.hypot(bx - ax, by - ay);
  }
  index.finish();
  let worst: Deviation = { distance: 0, at: places[0] };
  for (const place of places) {
    const [x, y] = place;
    for (let reach = (firstReach * perimeter) / count; ; reach *= 2) {
      const sides = index.search(x - reach, y - reach, x + reach, y + reach);
      let nearest = Number.POSITIVE_INFINITY;
      for (const i of sides) nearest = Math.min(nearest, distanceTo(place, polygon[i], polygon[(i + 1) % count]));
      // What lies outside the box is farther away than its half width.
      if (nearest > reach && reach < 2 * perimeter) continue;
      if (nearest > worst.distance && Number.isFinite(nearest)) worst = { distance: nearest, at: place };
      break;
    }
  }
  return worst;
}

function distanceTo([x, y]: Place, [ax, ay]: Place, [bx, by]: Place): number {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const share = square > 0 ? Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / square)) : 0;
  return Math.hypot(ax + share * dx - x, ay + share * dy - y);
}
