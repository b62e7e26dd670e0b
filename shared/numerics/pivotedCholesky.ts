/** A matrix of low rank as a product with its own transpose: A = R R^T up to the wanted part of its trace. */
export interface LowRankFactor {
  readonly rank: number;
  /** Row by row, shape [size * rank]. */
  readonly rows: Readonly<Float64Array>;
}

/**
 * Factor of a symmetric positive semidefinite matrix of which only some columns are looked at: rows are taken in the
 * order of what is left on the diagonal, until no more than a part of the trace is left.
 * Source: Harbrecht, Peters & Schneider (2012), Appl. Numer. Math. 62, 428, algorithm 1.
 * @param diagonal of the matrix, shape [size]
 * @param column   entries of one column, shape [size]
 * @param leftPart of the trace that may be left out, 0 or more
 */
export function pivotedCholesky(
  diagonal: Readonly<Float64Array>,
  column: (j: number) => Readonly<Float64Array>,
  leftPart: number,
): LowRankFactor {
  const size = diagonal.length;
  const left = diagonal.map((value) => Math.max(0, value));
  const trace = left.reduce((sum, value) => sum + value, 0);
  const columns: Float64Array[] = [];
  while (columns.length < size) {
    let pivot = 0;
    let rest = 0;
    for (let i = 0; i < size; i++) {
      rest += left[i];
      if (left[i] > left[pivot]) pivot = i;
    }
    if (!(rest > leftPart * trace) || !(left[pivot] > 0)) break;
    const next = Float64Array.from(column(pivot));
    for (const known of columns) {
      const share = known[pivot];
      for (let i = 0; i < size; i++) next[i] -= share * known[i];
    }
    const root = Math.sqrt(left[pivot]);
    for (let i = 0; i < size; i++) {
      next[i] /= root;
      left[i] = Math.max(0, left[i] - next[i] ** 2);
    }
    left[pivot] = 0;
    columns.push(next);
  }
  const rank = columns.length;
  const rows = new Float64Array(size * rank);
  columns.forEach((values, k) => {
    for (let i = 0; i < size; i++) rows[i * rank + k] = values[i];
  });
  return { rank, rows };
}
