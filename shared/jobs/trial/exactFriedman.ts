import { type BlockScores, blockRanks } from "./blockScores";

/** Steps of the count above which it is given up; a second or so. */
const mostSteps = 1_500_000;

/**
 * Exact p of Friedman's test, ties as they are: the share of all ways to deal each block's ranks out anew whose rank sums
 * spread at least as far. Counted block by block over the sorted rank sums, since the treatments are interchangeable
 * under the hypothesis. Source: Hollander & Wolfe (1999), 7.1, comment 7 (conditional distribution).
 * @param data complete blocks
 * @returns null when there are too many ways to count them all
 */
export function exactFriedmanP(data: BlockScores): number | null {
  const { blockCount: n, treatmentCount: k } = data;
  // Doubled, so that shared ranks are whole numbers too.
  const ranks = blockRanks(data).map((rank) => 2 * rank);
  const base = 2 * n * k + 1;
  if (base ** k > Number.MAX_SAFE_INTEGER) return null;
  const observed = new Float64Array(k);
  let states = new Map<number, number>([[0, 1]]);
  const sums = new Array<number>(k);
  let steps = 0;
  for (let block = 0; block < n; block++) {
    const own = Array.from(ranks.subarray(block * k, (block + 1) * k));
    for (let j = 0; j < k; j++) observed[j] += own[j];
    const dealt = distinctOrders(own);
    steps += states.size * dealt.length;
    if (steps > mostSteps) return null;
    const next = new Map<number, number>();
    for (const [state, weight] of states) {
      for (const order of dealt) {
        let rest = state;
        for (let j = 0; j < k; j++) {
          sums[j] = (rest % base) + order[j];
          rest = Math.floor(rest / base);
        }
        const key = sortedKey(sums, base);
        next.set(key, (next.get(key) ?? 0) + weight / dealt.length);
      }
    }
    states = next;
  }
  const squares = (values: ArrayLike<number>) => Array.from(values).reduce((sum, value) => sum + value * value, 0);
  const limit = squares(observed);
  let p = 0;
  for (const [state, weight] of states) {
    let rest = state;
    let spread = 0;
    for (let j = 0; j < k; j++) {
      spread += (rest % base) ** 2;
      rest = Math.floor(rest / base);
    }
    if (spread >= limit) p += weight;
  }
  return Math.min(1, p);
}

/** Insertion sort in place, then one number of all: the lists are short. */
function sortedKey(values: number[], base: number): number {
  for (let i = 1; i < values.length; i++) {
    const value = values[i];
    let j = i;
    for (; j > 0 && values[j - 1] > value; j--) values[j] = values[j - 1];
    values[j] = value;
  }
  let key = 0;
  for (let i = values.length - 1; i >= 0; i--) key = key * base + values[i];
  return key;
}

/** Every different order of a list with repeats. */
function distinctOrders(values: readonly number[]): number[][] {
  if (values.length === 0) return [[]];
  return [...new Set(values)].flatMap((first) => {
    const place = values.indexOf(first);
    const rest = [...values.slice(0, place), ...values.slice(place + 1)];
    return distinctOrders(rest).map((order) => [first, ...order]);
  });
}
