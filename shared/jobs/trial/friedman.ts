import { problem, type Result, success } from "../../result";
import { tieSum } from "../../statistics/ranks";
import { chiSquareTail, fTail } from "../../statistics/tailProbability";
import { type BlockScores, blockRanks } from "./blockScores";

/** Friedman's test of complete blocks and how far the blocks agree. */
export interface FriedmanTest {
  readonly blockCount: number;
  readonly treatmentCount: number;
  /** Chi-square of Friedman, corrected for ties. */
  readonly statistic: number;
  readonly degreesOfFreedom: number;
  /** By the chi-square distribution: holds for many blocks, too large for few. */
  readonly chiSquareP: number;
  /** F by Iman and Davenport and its p, nearer to the truth for few blocks. */
  readonly fStatistic: number;
  readonly fP: number;
  /** Kendall's coefficient of concordance, 0 (no agreement) to 1 (all alike), corrected for ties. */
  readonly kendallW: number;
  /** Sum of ranks of each treatment, 1 being the expected rank, shape [treatmentCount]. */
  readonly rankSums: readonly number[];
}

/**
 * Friedman's rank test with the correction for ties. Sources: Friedman (1937), J. Am. Stat. Assoc. 32, 675-701; Hollander
 * & Wolfe (1999), eq. 7.8 (ties); Kendall & Babington Smith (1939), Ann. Math. Stat. 10, 275-287 (W); Iman & Davenport
 * (1980), Commun. Stat. A 9, 571-595 (F).
 * @param data complete: no score missing; 2 blocks and 2 treatments or more
 * @returns a problem "few-blocks", or "all-tied" when every block scores all treatments alike
 * @throws RangeError when a score is missing
 */
export function friedmanTest(data: BlockScores): Result<FriedmanTest> {
  const { blockCount: n, treatmentCount: k } = data;
  if (data.scores.some(Number.isNaN))
    throw new RangeError("a score is missing; Friedman's test needs complete blocks.");
  if (!(n >= 2 && k >= 2)) {
    return problem("few-blocks", `${n} complete players and ${k} pucks; Friedman's test needs 2 or more of both`);
  }
  const ranks = blockRanks(data);
  const rankSums = new Array<number>(k).fill(0);
  let ties = 0;
  for (let block = 0; block < n; block++) {
    const own = Array.from(ranks.subarray(block * k, (block + 1) * k));
    ties += tieSum(own);
    for (let j = 0; j < k; j++) rankSums[j] += own[j];
  }
  const mean = (n * (k + 1)) / 2;
  const spread = rankSums.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  const scale = n * k * (k + 1) - ties / (k - 1);
  if (!(scale > 1e-9)) return problem("all-tied", "every player scored all pucks alike; there is nothing to rank");
  const statistic = (12 * spread) / scale;
  const kendallW = statistic / (n * (k - 1));
  const fStatistic =
    kendallW < 1 - 1e-12 ? ((n - 1) * statistic) / (n * (k - 1) - statistic) : Number.POSITIVE_INFINITY;
  return success({
    blockCount: n,
    treatmentCount: k,
    statistic,
    degreesOfFreedom: k - 1,
    chiSquareP: chiSquareTail(statistic, k - 1),
    fStatistic,
    fP: fTail(fStatistic, k - 1, (k - 1) * (n - 1)),
    kendallW,
    rankSums,
  });
}
