import { mirrored } from "../flow/floorImage";
import type { PreparedSection } from "../solve/preparedSection";

/** The floor of a live solution. */
export interface LiveFloor {
  /** Gap / D. */
  readonly gapRatio: number;
  /** Foot of the section's centroid on the floor, body axes, m; the floor runs through it along the stream. */
  readonly foot: readonly [number, number];
}

/** The floor below a prepared section; null in an unbounded stream. */
export function liveFloor({ floor, nodes }: PreparedSection): LiveFloor | null {
  if (floor === null) return null;
  const [x, y] = nodes.centroid;
  const [imageX, imageY] = mirrored(floor, x, y);
  return { gapRatio: floor.gapRatio, foot: [(x + imageX) / 2, (y + imageY) / 2] };
}
