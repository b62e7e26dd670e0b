import { problem, type Result, success } from "../../result";
import { mirrored } from "../flow/floorImage";
import { checkGapRatio, SMALLEST_GAP_RATIO } from "../flow/floorPlane";
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

/**
 * Gap / D of a request.
 * @param gap  m; null without a floor
 * @param width  reference width D, m
 * @returns undefined without a floor, else 0 or at least {@link SMALLEST_GAP_RATIO}; a problem at "floorGap" in a narrower one
 */
export function liveGapRatio(gap: number | null, width: number): Result<number | undefined> {
  if (gap === null) return success(undefined);
  if (checkGapRatio(gap / width) === null) return success(gap / width);
  const millimetres = (length: number) => `${Number((length * 1000).toPrecision(3))} mm`;
  return problem(
    "floor-gap",
    `the gap to the floor, ${millimetres(gap)}, must be 0 (lying on the floor) or at least ${millimetres(SMALLEST_GAP_RATIO * width)}, ${SMALLEST_GAP_RATIO * 100} % of the height: boundary layers fill a narrower one, take 0 for it.`,
    "floorGap",
  );
}
