import { type PermutedP, permutedP } from "../../statistics/permutedP";
import type { RandomDraws } from "../../statistics/randomDraws";
import { shuffleInPlace } from "../../statistics/shuffle";
import { columnSums } from "./skillingsMack";

/**
 * p of a statistic of column sums when the cells of every block are shuffled among the places that are not missing: ties
 * and missing cells are taken as they are.
 * @param cells        shape [blocks * columnCount], NaN where missing; taken as the observed arrangement
 * @param permutations 1 or more
 */
export function permutedBlocksP(
  cells: Readonly<Float64Array>,
  columnCount: number,
  statistic: (sums: Readonly<Float64Array>) => number,
  permutations: number,
  draws: RandomDraws,
): PermutedP {
  if (!(permutations >= 1)) throw new RangeError(`permutations are ${permutations}; they must be 1 or more.`);
  const observed = statistic(columnSums(cells, columnCount));
  const limit = observed - 1e-9 * Math.max(1, Math.abs(observed));
  const shuffled = Float64Array.from(cells);
  const places: number[][] = [];
  for (let start = 0; start < cells.length; start += columnCount) {
    const own: number[] = [];
    for (let j = start; j < start + columnCount; j++) if (!Number.isNaN(cells[j])) own.push(j);
    places.push(own);
  }
  let asFar = 0;
  for (let m = 0; m < permutations; m++) {
    for (const own of places) shuffleInPlace(shuffled, own, draws);
    if (statistic(columnSums(shuffled, columnCount)) >= limit) asFar++;
  }
  return permutedP(asFar, permutations);
}
