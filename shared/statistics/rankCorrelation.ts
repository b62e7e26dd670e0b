import { problem, type Result, success } from "../result";
import { logGamma } from "./logGamma";
import { permutedP } from "./permutedP";
import type { RandomDraws } from "./randomDraws";
import { sharedRanks } from "./ranks";
import { shuffleInPlace } from "./shuffle";

/** A rank correlation and how likely one as strong would be by chance. */
export interface RankCorrelation {
  /** -1 to 1. */
  readonly coefficient: number;
  /** Two-sided p over all orders of one variable, ties as they are. */
  readonly pValue: number;
  readonly method: "exact" | "permuted";
  /** Orders counted or drawn. */
  readonly orders: number;
  /** Of a drawn p; null for an exact one. */
  readonly standardError: number | null;
  /** The least two-sided p that so many items with such ties could give at all. */
  readonly smallestP: number;
}

export interface RankCorrelations {
  readonly itemCount: number;
  /** Spearman's rho. */
  readonly spearman: RankCorrelation;
  /** Kendall's tau-b. */
  readonly kendall: RankCorrelation;
}

/** Up to so many items all orders are gone through. */
const mostExactItems = 9;
const permutations = 20_000;

/**
 * Spearman's rho and Kendall's tau-b with the permutation distribution: all orders for up to 9 items, 20 000 random ones
 * beyond. Sources: Spearman (1904), Am. J. Psychol. 15, 72-101; Kendall (1945), Biometrika 33, 239-251 (tau-b);
 * Kendall & Gibbons (1990), ch. 3-5 (ties, significance).
 * @param x     shape [n], finite
 * @param y     shape [n], finite
 * @param draws used beyond 9 items
 * @returns a problem "few-items" below 3 items, "all-tied" when all x or all y are equal
 */
export function rankCorrelations(
  x: readonly number[],
  y: readonly number[],
  draws: RandomDraws,
): Result<RankCorrelations> {
  if (x.length !== y.length)
    throw new RangeError(`x has ${x.length} values and y ${y.length}; both need the same number.`);
  const n = x.length;
  if (n < 3) return problem("few-items", `${n} items have both values; a rank correlation needs 3 or more`);
  const [a, b] = [sharedRanks(x), sharedRanks(y)];
  if (new Set(a).size === 1 || new Set(b).size === 1) {
    return problem("all-tied", "all values are equal; there is no order to compare");
  }
  return success({
    itemCount: n,
    spearman: tested(a, b, spearmanRho, draws),
    kendall: tested(a, b, kendallTauB, draws),
  });
}

type Coefficient = (a: readonly number[], b: readonly number[]) => number;

/** The product-moment correlation of ranks. */
export function spearmanRho(a: readonly number[], b: readonly number[]): number {
  const mean = (a.length + 1) / 2;
  let ab = 0;
  let aa = 0;
  let bb = 0;
  for (let i = 0; i < a.length; i++) {
    ab += (a[i] - mean) * (b[i] - mean);
    aa += (a[i] - mean) ** 2;
    bb += (b[i] - mean) ** 2;
  }
  return ab / Math.sqrt(aa * bb);
}

export function kendallTauB(a: readonly number[], b: readonly number[]): number {
  let concordance = 0;
  let untiedA = 0;
  let untiedB = 0;
  for (let i = 0; i < a.length; i++) {
    for (let j = 0; j < i; j++) {
      const da = Math.sign(a[i] - a[j]);
      const db = Math.sign(b[i] - b[j]);
      concordance += da * db;
      untiedA += Math.abs(da);
      untiedB += Math.abs(db);
    }
  }
  return concordance / Math.sqrt(untiedA * untiedB);
}

function tested(
  a: readonly number[],
  b: readonly number[],
  coefficientOf: Coefficient,
  draws: RandomDraws,
): RankCorrelation {
  const coefficient = coefficientOf(a, b);
  const size = (value: number) => Math.abs(value) + 1e-10;
  const moved = [...b];
  if (a.length <= mostExactItems) {
    let orders = 0;
    let asFar = 0;
    let farthest = 0;
    let atFarthest = 0;
    forEveryOrder(moved, () => {
      const value = Math.abs(coefficientOf(a, moved));
      orders++;
      if (size(value) >= Math.abs(coefficient)) asFar++;
      if (value > farthest + 1e-10) {
        farthest = value;
        atFarthest = 1;
      } else if (size(value) >= farthest) atFarthest++;
    });
    const pValue = asFar / orders;
    return { coefficient, pValue, method: "exact", orders, standardError: null, smallestP: atFarthest / orders };
  }
  const places = moved.map((_, i) => i);
  let asFar = 0;
  for (let m = 0; m < permutations; m++) {
    shuffleInPlace(moved, places, draws);
    if (size(coefficientOf(a, moved)) >= Math.abs(coefficient)) asFar++;
  }
  const { pValue, standardError } = permutedP(asFar, permutations);
  return {
    coefficient,
    pValue,
    method: "permuted",
    orders: permutations,
    standardError,
    smallestP: Math.max(1 / (permutations + 1), smallestOrderP(a, b, coefficientOf)),
  };
}

/**
 * The share of all orders of one variable that give the strongest coefficient, of either sign: those in which the two
 * rise together, or against each other. A table of ties with rows a_i, columns b_j and cells n_ij arises from
 * a_i! ... b_j! ... / n_ij! ... orders of n!. Source: Fisher (1935), J. R. Stat. Soc. 98, 48 (hypergeometric tables).
 */
export function smallestOrderP(a: readonly number[], b: readonly number[], coefficientOf: Coefficient): number {
  const rising = (values: readonly number[]) => [...values].sort((one, other) => one - other);
  const up = rising(a);
  const ends = [rising(b), rising(b).reverse()].map((order) => ({
    size: Math.abs(coefficientOf(up, order)),
    share: Math.exp(
      logFactorials(up) +
        logFactorials(order) -
        logFactorials(up.map((one, i) => `${one} ${order[i]}`)) -
        logGamma(a.length + 1),
    ),
  }));
  const strongest = Math.max(...ends.map(({ size }) => size));
  return Math.min(
    1,
    ends.reduce((sum, { size, share }) => sum + (size >= strongest - 1e-10 ? share : 0), 0),
  );
}

/** Sum of the logarithms of the factorials of how often each value stands in a list. */
function logFactorials(values: readonly unknown[]): number {
  const counts = new Map<unknown, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts.values()].reduce((sum, count) => sum + logGamma(count + 1), 0);
}

/** Goes through all orders of a list in place. Source: Heap (1963), Comput. J. 6, 293-298. */
function forEveryOrder(values: number[], visit: () => void): void {
  const count = new Array<number>(values.length).fill(0);
  visit();
  for (let i = 1; i < values.length; ) {
    if (count[i] < i) {
      const j = i % 2 === 0 ? 0 : count[i];
      [values[i], values[j]] = [values[j], values[i]];
      visit();
      count[i]++;
      i = 1;
    } else {
      count[i] = 0;
      i++;
    }
  }
}
