/**
 * The interval of a rising table that holds a value: the last index i with values[i] <= x, kept to the table's intervals
 * where x lies outside. By halving.
 * @param values rising, shape [intervals + 1] or more
 * @param intervals how many of the intervals count, 1 or more; all by default. values[intervals] itself is not read.
 * @returns a whole number in [0, intervals - 1]
 */
export function intervalAt(values: ArrayLike<number>, x: number, intervals = values.length - 1): number {
  let low = 0;
  let high = intervals;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (values[middle] <= x) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * Linear interpolation in a table, which keeps the order of its values: between two rising values it rises.
 * @param xs rising, shape [n], n >= 2
 * @param ys shape [n]
 * @returns the first or the last y outside the table; NaN for NaN
 */
export function valueInTable(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
  const last = xs.length - 1;
  if (x <= xs[0]) return ys[0];
  if (x >= xs[last]) return ys[last];
  const i = intervalAt(xs, x);
  return ys[i] + ((x - xs[i]) / (xs[i + 1] - xs[i])) * (ys[i + 1] - ys[i]);
}
