/** Mean of one or more values. */
export function mean(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i];
  return sum / values.length;
}

/** Sum of squared distances from a middle. */
export function squaresAbout(values: ArrayLike<number>, middle: number): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += (values[i] - middle) ** 2;
  return sum;
}

/** Experimental standard deviation of two or more values. Source: JCGM 100:2008, 4.2.2. */
export function standardDeviation(values: ArrayLike<number>): number {
  return Math.sqrt(squaresAbout(values, mean(values)) / (values.length - 1));
}

/**
 * Quantile of rising values, between neighbours by straight line. Source: Hyndman & Fan (1996), Am. Stat. 50, 361-365,
 * definition 7.
 * @param sorted shape [n], n 1 or more
 * @param share  0 (the lowest) to 1 (the highest)
 */
export function quantileOfSorted(sorted: ArrayLike<number>, share: number): number {
  const at = share * (sorted.length - 1);
  const below = Math.floor(at);
  const above = Math.min(below + 1, sorted.length - 1);
  return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
}
