import { sharedRanks } from "./ranks";

/** Wilcoxon's signed-rank test of paired differences. */
export interface SignedRankTest {
  /** Sum of the ranks of differences above 0, and below 0. */
  readonly positiveSum: number;
  readonly negativeSum: number;
  /** Differences that are not 0. */
  readonly counted: number;
  readonly zeros: number;
  /** Exact two-sided p given the ties and zeros; 1 when all differences are 0. */
  readonly pValue: number;
  /** The least p that so many differences could give: all of one sign. */
  readonly smallestP: number;
}

/** Differences smaller than this against the largest one are rounding of equal scores. */
const rounding = 1e-9;

/**
 * The signed-rank test; its distribution is counted over all signs of the differences, so p is exact with ties too. Zeros
 * take part in the ranking and are then left out. Sources: Wilcoxon (1945), Biometrics Bull. 1, 80-83; Pratt (1959),
 * J. Am. Stat. Assoc. 54, 655-667 (zeros).
 * @param differences one per pair, finite; shape [n], n up to a few hundred
 */
export function signedRankTest(differences: Readonly<Float64Array>): SignedRankTest {
  const bad = differences.findIndex((each) => !Number.isFinite(each));
  if (bad >= 0) throw new RangeError(`difference ${bad} is ${differences[bad]}; all must be finite.`);
  const sizes = Array.from(differences, Math.abs);
  const largest = sizes.reduce((most, size) => Math.max(most, size), 0);
  const isZero = sizes.map((size) => size <= rounding * largest);
  // Rounded, so that equal differences of scores such as 0.1 + 0.2 and 0.3 are equal.
  const ranked = sharedRanks(sizes.map((size) => (largest > 0 ? Number((size / largest).toPrecision(10)) : 0)));
  let positiveSum = 0;
  let negativeSum = 0;
  const doubled: number[] = [];
  for (let i = 0; i < sizes.length; i++) {
    if (isZero[i]) continue;
    doubled.push(Math.round(2 * ranked[i]));
    if (differences[i] > 0) positiveSum += ranked[i];
    else negativeSum += ranked[i];
  }
  const counted = doubled.length;
  return {
    positiveSum,
    negativeSum,
    counted,
    zeros: sizes.length - counted,
    pValue: counted === 0 ? 1 : twoSidedP(doubled, Math.round(2 * Math.min(positiveSum, negativeSum))),
    smallestP: counted === 0 ? 1 : 2 ** (1 - counted),
  };
}

/** Twice the probability that the smaller sum is at most so small, over all signs. */
function twoSidedP(doubledRanks: readonly number[], smaller: number): number {
  const total = doubledRanks.reduce((sum, rank) => sum + rank, 0);
  const ways = new Float64Array(total + 1);
  ways[0] = 1;
  let reached = 0;
  for (const rank of doubledRanks) {
    reached += rank;
    for (let sum = reached; sum >= 0; sum--) ways[sum] = (ways[sum] + (sum >= rank ? ways[sum - rank] : 0)) / 2;
  }
  let tail = 0;
  for (let sum = 0; sum <= smaller; sum++) tail += ways[sum];
  return Math.min(1, 2 * tail);
}
