import { mean, quantileOfSorted } from "./sample";

/** What draws of a quantity come to. */
export interface DrawnBand {
  /** 5 % of the draws lie below. */
  readonly low: number;
  /** Mean of the draws. */
  readonly expected: number;
  /** 95 % of the draws lie below. */
  readonly high: number;
}

/** Share of the draws below a band's low end, and above its high one: common practice. */
const outsideShare = 0.05;

/** @param draws shape [n], n 1 or more; left as they are */
export function drawnBand(draws: ArrayLike<number>): DrawnBand {
  const sorted = Float64Array.from(draws).sort();
  return {
    low: quantileOfSorted(sorted, outsideShare),
    expected: mean(sorted),
    high: quantileOfSorted(sorted, 1 - outsideShare),
  };
}
