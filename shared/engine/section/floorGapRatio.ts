import { problem, type Result, success } from "../../result";
import { checkGapRatio, SMALLEST_GAP_RATIO } from "../flow/floorPlane";

/**
 * Gap / D of a section that lies over a floor.
 * @param gap            m; null without a floor
 * @param referenceWidth D, m
 * @returns undefined without a floor, else 0 or at least {@link SMALLEST_GAP_RATIO}; a problem at "floorGap" in a narrower one
 */
export function floorGapRatio(gap: number | null, referenceWidth: number): Result<number | undefined> {
  if (gap === null) return success(undefined);
  if (checkGapRatio(gap / referenceWidth) === null) return success(gap / referenceWidth);
  const millimetres = (length: number) => `${Number((length * 1000).toPrecision(3))} mm`;
  return problem(
    "floor-gap",
    `the gap to the floor, ${millimetres(gap)}, must be 0 (lying on the floor) or at least ${millimetres(SMALLEST_GAP_RATIO * referenceWidth)}, ${SMALLEST_GAP_RATIO * 100} % of the height: boundary layers fill a narrower one, take 0 for it.`,
    "floorGap",
  );
}
