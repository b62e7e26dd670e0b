/**
 * Ranks of values, 1 the lowest; equal values share the mean of their ranks. Source: Kendall & Gibbons (1990), Rank
 * Correlation Methods, ch. 3 (tied ranks).
 * @param values shape [n], no NaN
 * @returns shape [n]
 */
export function sharedRanks(values: readonly number[]): number[] {
  const order = values.map((_, i) => i).sort((a, b) => values[a] - values[b]);
  const ranks = new Array<number>(values.length);
  for (let start = 0; start < order.length; ) {
    let end = start + 1;
    while (end < order.length && values[order[end]] === values[order[start]]) end++;
    for (let i = start; i < end; i++) ranks[order[i]] = (start + 1 + end) / 2;
    start = end;
  }
  return ranks;
}

/** Sum of t^3 - t over the groups of t equal values in a list. */
export function tieSum(values: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  let sum = 0;
  for (const t of counts.values()) sum += t ** 3 - t;
  return sum;
}
