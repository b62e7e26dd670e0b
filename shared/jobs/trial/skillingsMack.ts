import { factorInPlace, solveFactored } from "../../numerics/lu";
import { problem, type Result, success } from "../../result";
import { chiSquareTail } from "../../statistics/tailProbability";
import { type BlockScores, blockRanks } from "./blockScores";

/** The test of Skillings and Mack: Friedman's with missing cells. */
export interface SkillingsMackTest {
  readonly statistic: number;
  readonly degreesOfFreedom: number;
  readonly chiSquareP: number;
  /** Blocks with two scores or more; others say nothing about differences. */
  readonly usedBlocks: number;
  /** Weighted sums of centred ranks, below 0 where a treatment is ranked better than its rivals, shape [treatmentCount]. */
  readonly adjustedSums: readonly number[];
}

/** What one design needs of the statistic, so that many permutations share it. */
export interface SkillingsMackDesign {
  readonly treatmentCount: number;
  /** Weighted centred ranks, shape [usedBlocks * treatmentCount], NaN where missing. */
  readonly adjustedRanks: Float64Array;
  readonly usedBlocks: number;
  /** Statistic of sums of adjusted ranks, shape [treatmentCount]. */
  statistic(sums: Readonly<Float64Array>): number;
}

/**
 * Source: Skillings & Mack (1981), Technometrics 23, 171-177, eq. 2.2-2.7; ties share the mean of their ranks, as there,
 * without a correction: the chi-square p is then too large, a permutation p is not.
 * @param data any pattern of missing cells
 * @returns a problem "few-blocks", or "not-compared" when no chain of comparisons links all treatments
 */
export function skillingsMackTest(data: BlockScores): Result<SkillingsMackTest> {
  const design = skillingsMackDesign(data);
  if (!design.ok) return design;
  const { adjustedRanks, treatmentCount: k, usedBlocks } = design.value;
  const sums = columnSums(adjustedRanks, k);
  const statistic = design.value.statistic(sums);
  return success({
    statistic,
    degreesOfFreedom: k - 1,
    chiSquareP: chiSquareTail(statistic, k - 1),
    usedBlocks,
    adjustedSums: [...sums],
  });
}

/** Weights and covariance of a design; see skillingsMackTest. */
export function skillingsMackDesign(data: BlockScores): Result<SkillingsMackDesign> {
  const { treatmentCount: k } = data;
  const ranks = blockRanks(data);
  const rows: number[][] = [];
  const together = new Float64Array(k * k);
  for (let block = 0; block < data.blockCount; block++) {
    const own = Array.from(ranks.subarray(block * k, (block + 1) * k));
    const size = own.filter((rank) => !Number.isNaN(rank)).length;
    if (size < 2) continue;
    rows.push(own.map((rank) => Math.sqrt(12 / (size + 1)) * (rank - (size + 1) / 2)));
    for (let i = 0; i < k; i++) {
      for (let j = 0; j < k; j++) if (i !== j && own[i] > 0 && own[j] > 0) together[i * k + j]++;
    }
  }
  if (rows.length < 2 || k < 2) {
    return problem("few-blocks", `${rows.length} players scored two pucks or more; the test needs 2 such players`);
  }
  if (!isConnected(together, k)) {
    return problem("not-compared", "some pucks were never scored by a player who scored one of the others");
  }
  // The covariance of the sums, without the last treatment: its sum follows from the others.
  const size = k - 1;
  const covariance = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < k; j++) if (j !== i) covariance[i * size + i] += together[i * k + j];
    for (let j = 0; j < size; j++) if (j !== i) covariance[i * size + j] = -together[i * k + j];
  }
  const factors = factorInPlace(covariance, size);
  return success({
    treatmentCount: k,
    adjustedRanks: Float64Array.from(rows.flat()),
    usedBlocks: rows.length,
    statistic: (sums) => {
      const first = sums.slice(0, size);
      const solved = solveFactored(factors, first);
      return first.reduce((total, sum, i) => total + sum * solved[i], 0);
    },
  });
}

/** Sums over blocks, missing cells counting nothing. */
export function columnSums(cells: Readonly<Float64Array>, columnCount: number): Float64Array {
  const sums = new Float64Array(columnCount);
  for (let i = 0; i < cells.length; i++) if (!Number.isNaN(cells[i])) sums[i % columnCount] += cells[i];
  return sums;
}

function isConnected(together: Readonly<Float64Array>, k: number): boolean {
  const reached = new Set([0]);
  for (const i of reached) for (let j = 0; j < k; j++) if (together[i * k + j] > 0) reached.add(j);
  return reached.size === k;
}
