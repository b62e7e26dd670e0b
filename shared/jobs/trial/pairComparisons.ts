import { holmCorrection } from "../../statistics/holmCorrection";
import { signedRankTest } from "../../statistics/signedRank";
import { type BlockScores, blockRows } from "./blockScores";

/** Two pucks held against each other by the players who scored both. */
export interface PairComparison {
  /** Puck indices, the more liked one first. */
  readonly better: number;
  readonly worse: number;
  readonly players: number;
  readonly preferBetter: number;
  readonly preferWorse: number;
  readonly undecided: number;
  /** Exact two-sided p of Wilcoxon's signed-rank test. */
  readonly pValue: number;
  /** The same, allowing for all pairs at once (Holm). */
  readonly holmP: number;
  /** Least Holm p that so many players could give if all preferred the same one and every other pair were as clear. */
  readonly smallestHolmP: number;
}

/**
 * Every pair of pucks by the signed-rank test of the players' differences, with Holm's correction. Sources: Wilcoxon (1945), Biometrics Bull. 1, 80-83; Holm (1979), Scand. J. Stat. 6, 65-70. The
 * signed ranks take a difference of two steps as more than one of one step, also between players.
 */
export function pairComparisons(data: BlockScores): PairComparison[] {
  const rows = blockRows(data);
  const { treatmentCount: k } = data;
  const pairs = Array.from({ length: k }, (_, i) => Array.from({ length: k - i - 1 }, (_, j) => [i, i + 1 + j])).flat();
  const tested = pairs.map(([i, j]) => {
    const differences = Float64Array.from(rows.map((row) => row[i] - row[j]).filter((each) => !Number.isNaN(each)));
    const test = signedRankTest(differences);
    const count = (sign: number) => differences.filter((each) => Math.sign(each) === sign).length;
    const isFirstBetter = test.positiveSum >= test.negativeSum;
    return {
      better: isFirstBetter ? i : j,
      worse: isFirstBetter ? j : i,
      players: differences.length,
      preferBetter: count(isFirstBetter ? 1 : -1),
      preferWorse: count(isFirstBetter ? -1 : 1),
      undecided: count(0),
      pValue: test.pValue,
      smallestP: differences.length === 0 ? 1 : 2 ** (1 - differences.length),
    };
  });
  const holm = holmCorrection(tested.map(({ pValue }) => pValue));
  return tested.map(({ smallestP, ...pair }, i) => ({
    ...pair,
    holmP: holm[i],
    smallestHolmP: Math.min(1, pairs.length * smallestP),
  }));
}
