import { WAKE_NUMBERS } from "../constants/wakeNumbers";
import type { SectionNodes } from "../geometry/sectionNodes";

/** The part of a section that lies on the floor, as contour positions (node steps from the nose, counter-clockwise). */
export interface FloorContact {
  /** Upstream and downstream end; they run as `front` <= `middle` <= `rear`. */
  readonly front: number;
  readonly middle: number;
  readonly rear: number;
  /** Coordinates of the middle's foot on the section's lowest level, m. */
  readonly x: number;
  readonly y: number;
}

/** The section counts as touching where it is no higher above its lowest point than this / D. */
const CONTACT_HEIGHT_RATIO = WAKE_NUMBERS.contactHeight.value;

/**
 * Finds the contact of a section whose lowest level is known.
 * @param upX, upY unit vector away from the floor
 * @param lowest coordinate of the lowest point along (upX, upY), m
 * @param referenceWidth D, m
 */
export function floorContact(
  nodes: SectionNodes,
  upX: number,
  upY: number,
  lowest: number,
  referenceWidth: number,
): FloorContact {
  const { count, x, y } = nodes;
  const height = (i: number) => {
    const node = ((i % count) + count) % count;
    return upX * x[node] + upY * y[node] - lowest - CONTACT_HEIGHT_RATIO * referenceWidth;
  };
  let lowestNode = 0;
  for (let i = 1; i < count; i++) if (height(i) < height(lowestNode)) lowestNode = i;
  // Counter-clockwise the lower side runs with the stream: the rear end lies at higher positions.
  const rear = crossing(height, lowestNode, 1, count);
  const front = crossing(height, lowestNode, -1, count);
  const middle = (front + rear) / 2;
  const at = (values: Float64Array) => {
    const i = Math.floor(middle);
    const u = middle - i;
    return (1 - u) * values[((i % count) + count) % count] + u * values[(((i + 1) % count) + count) % count];
  };
  const lift = lowest - (upX * at(x) + upY * at(y));
  return { front, middle, rear, x: at(x) + lift * upX, y: at(y) + lift * upY };
}

/** Walks from a node until the height above the contact turns positive. */
function crossing(height: (i: number) => number, start: number, direction: 1 | -1, count: number): number {
  for (let step = 0; step < count; step++) {
    const a = height(start + direction * step);
    const b = height(start + direction * (step + 1));
    if (b > 0) return start + direction * (step + (a < 0 ? a / (a - b) : 0));
  }
  return start;
}
