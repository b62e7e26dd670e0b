import type { OrientationIndex } from "./orientationIndex";

/**
 * "less" and "more": the whole band lies on one side of the baseline, errors taken as independent.
 * "lessIfErrorsAreShared" and "moreIfErrorsAreShared": only with errors that candidate and baseline have in common.
 * "notShown": the band holds the baseline.
 */
export type DragVerdictKind = "less" | "lessIfErrorsAreShared" | "notShown" | "moreIfErrorsAreShared" | "more";

export interface DragVerdict {
  readonly kind: DragVerdictKind;
  readonly sentence: string;
}

/** Says whether a candidate's drag beats the baseline's by more than the band, or that it does not. */
export function dragVerdict({ index, indexWithCommonError }: OrientationIndex, candidate: string): DragVerdict {
  const spread = (band: { readonly low: number; readonly high: number }) =>
    `${percent(band.low)} to ${percent(band.high)}`;
  const expected = `expected estimate ${percent(index.expected)}`;
  const independent = `band ${spread(index)}`;
  const shared = `band ${spread(indexWithCommonError)} when both share the method's errors, ${spread(index)} when they do not`;
  if (index.high < 1) {
    return {
      kind: "less",
      sentence: `${candidate} has less drag than the baseline by more than the band: ${expected}, ${independent}.`,
    };
  }
  if (index.low > 1) {
    return {
      kind: "more",
      sentence: `${candidate} has more drag than the baseline by more than the band: ${expected}, ${independent}.`,
    };
  }
  if (indexWithCommonError.high < 1) {
    return {
      kind: "lessIfErrorsAreShared",
      sentence: `${candidate} beats the baseline only if both share the method's errors: ${expected}, ${shared}. Measure before relying on it.`,
    };
  }
  if (indexWithCommonError.low > 1) {
    return {
      kind: "moreIfErrorsAreShared",
      sentence: `${candidate} is worse than the baseline only if both share the method's errors: ${expected}, ${shared}.`,
    };
  }
  return {
    kind: "notShown",
    sentence: `No difference is shown: ${candidate} does not beat the baseline by more than the band (${expected}, ${shared}).`,
  };
}

/** Change of an index from 1 in whole per cent, for instance "+5 %"; what rounds to nothing has no sign. */
function percent(index: number): string {
  const change = Math.round(100 * (index - 1));
  return change === 0 ? "0 %" : `${change > 0 ? "+" : ""}${change} %`;
}
