import type { RandomDraws } from "../../statistics/randomDraws";
import { columnSums } from "./skillingsMack";

/** A p value by random permutations. */
export interface PermutedP {
  readonly pValue: number;
  readonly permutations: number;
  /** Monte Carlo standard error of the p value. */
  readonly standardError: number;
}

/**
 * p of a statistic of column sums when the cells of every block are shuffled among the places that are not missing: ties
 * and missing cells are taken as they are. Source: Phipson & Smyth (2010), Stat. Appl. Genet. Mol. Biol. 9, art. 39,
 * eq. 1: (b + 1) / (m + 1).
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

/** @param asFar permutations whose statistic is as extreme as the observed one, or more */
export function permutedP(asFar: number, permutations: number): PermutedP {
  const pValue = (asFar + 1) / (permutations + 1);
  return { pValue, permutations, standardError: Math.sqrt((pValue * (1 - pValue)) / permutations) };
}

/** Shuffles the values at some places among these places. Source: Fisher & Yates; Durstenfeld (1964), Commun. ACM 7, 420. */
export function shuffleInPlace(values: Float64Array | number[], places: readonly number[], draws: RandomDraws): void {
  for (let i = places.length - 1; i > 0; i--) {
    const j = Math.floor(draws.uniform() * (i + 1));
    const kept = values[places[i]];
    values[places[i]] = values[places[j]];
    values[places[j]] = kept;
  }
}
