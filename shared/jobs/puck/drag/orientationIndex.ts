import type { DragBand } from "../../../engine/trust/dragInterval";
import { problem, type Result, success } from "../../../result";

/** How a puck meets the water in play: standing on its rim, lying flat (both edge-on to the stream), or face-on. */
export type Orientation = "upright" | "flat" | "faceOn";

export const orientations: readonly Orientation[] = ["upright", "flat", "faceOn"];

/** Shares of play, any positive scale, and drag areas, m^2, by orientation. */
export type OrientationShares = Readonly<Record<Orientation, number>>;
export type OrientationDrag = Readonly<Record<Orientation, DragBand>>;

export interface OrientationIndex {
  /** Weighted drag over the baseline's; 1 is equal. Errors of candidate and baseline taken as independent. */
  readonly index: DragBand;
  /** The same with errors taken as common to both, as when both come from one method: the narrower view. */
  readonly indexWithCommonError: DragBand;
  /** (index - 1) in per cent: below 0 is less drag. */
  readonly changePercent: DragBand;
}

/** Mean of the drag ratios candidate / baseline, weighted by the shares of play. */
export function orientationIndex(
  shares: OrientationShares,
  candidate: OrientationDrag,
  baseline: OrientationDrag,
): Result<OrientationIndex> {
  const total = orientations.reduce((sum, orientation) => sum + shares[orientation], 0);
  if (!(total > 0 && orientations.every((orientation) => shares[orientation] >= 0))) {
    return problem("orientation", "shares of play must be 0 or more and not all 0", "shares");
  }
  for (const orientation of orientations) {
    for (const drag of [candidate[orientation], baseline[orientation]]) {
      if (!(drag.low > 0 && drag.low <= drag.expected && drag.expected <= drag.high)) {
        return problem("orientation", `drag ${orientation} must be above 0 with low <= expected <= high`, orientation);
      }
    }
  }
  const weigh = (ratio: (orientation: Orientation) => number) =>
    orientations.reduce((sum, orientation) => sum + (shares[orientation] / total) * ratio(orientation), 0);
  const common = (orientation: Orientation) =>
    (["low", "expected", "high"] as const).map((end) => candidate[orientation][end] / baseline[orientation][end]);
  const index = {
    low: weigh((orientation) => candidate[orientation].low / baseline[orientation].high),
    expected: weigh((orientation) => candidate[orientation].expected / baseline[orientation].expected),
    high: weigh((orientation) => candidate[orientation].high / baseline[orientation].low),
  };
  const percent = (value: number) => 100 * (value - 1);
  return success({
    index,
    indexWithCommonError: {
      low: weigh((orientation) => Math.min(...common(orientation))),
      expected: index.expected,
      high: weigh((orientation) => Math.max(...common(orientation))),
    },
    changePercent: { low: percent(index.low), expected: percent(index.expected), high: percent(index.high) },
  });
}
