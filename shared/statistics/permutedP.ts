/** A p value by random permutations. */
export interface PermutedP {
  readonly pValue: number;
  readonly permutations: number;
  /** Monte Carlo standard error of the p value. */
  readonly standardError: number;
}

/**
 * p of a permutation test. Source: Phipson & Smyth (2010), Stat. Appl. Genet. Mol. Biol. 9, art. 39, eq. 1: (b + 1) / (m + 1).
 * @param asFar permutations whose statistic is as extreme as the observed one, or more
 */
export function permutedP(asFar: number, permutations: number): PermutedP {
  const pValue = (asFar + 1) / (permutations + 1);
  return { pValue, permutations, standardError: Math.sqrt((pValue * (1 - pValue)) / permutations) };
}
