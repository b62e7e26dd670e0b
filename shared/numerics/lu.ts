/** LU factors of a square matrix with the row order of its partial pivoting. */
export interface LuFactors {
  readonly size: number;
  /** Row-major, shape [size * size]: U on and above the diagonal, the multipliers of L below it. */
  readonly factors: Float64Array;
  /** Row of the original matrix that stands in each row of the factors, shape [size]. */
  readonly rowOrder: Int32Array;
}

/**
 * Factors a row-major matrix as P A = L U with partial pivoting (Golub & Van Loan, Matrix Computations, 4th ed. 2013, algorithm 3.4.1).
 * @param matrix row-major, shape [size * size]; overwritten by the factors
 * @throws RangeError when the length is not size^2 or a pivot is zero
 */
export function factorInPlace(matrix: Float64Array, size: number): LuFactors {
  if (matrix.length !== size * size)
    throw new RangeError(`matrix has ${matrix.length} values; size ${size} needs ${size * size}.`);
  const rowOrder = Int32Array.from({ length: size }, (_, i) => i);
  for (let k = 0; k < size; k++) {
    let pivotRow = k;
    for (let i = k + 1; i < size; i++) {
      if (Math.abs(matrix[i * size + k]) > Math.abs(matrix[pivotRow * size + k])) pivotRow = i;
    }
    const pivot = matrix[pivotRow * size + k];
    if (!(Math.abs(pivot) > 0))
      throw new RangeError(`column ${k} of the ${size} x ${size} matrix has no usable pivot.`);
    if (pivotRow !== k) {
      for (let j = 0; j < size; j++) {
        const swap = matrix[k * size + j];
        matrix[k * size + j] = matrix[pivotRow * size + j];
        matrix[pivotRow * size + j] = swap;
      }
      const swap = rowOrder[k];
      rowOrder[k] = rowOrder[pivotRow];
      rowOrder[pivotRow] = swap;
    }
    const rowK = k * size;
    for (let i = k + 1; i < size; i++) {
      const rowI = i * size;
      const multiplier = matrix[rowI + k] / pivot;
      matrix[rowI + k] = multiplier;
      for (let j = k + 1; j < size; j++) matrix[rowI + j] -= multiplier * matrix[rowK + j];
    }
  }
  return { size, factors: matrix, rowOrder };
}

/** Solves A x = b with the factors of A. `rightSide` has shape [size]; returns x, shape [size]. */
export function solveFactored(lu: LuFactors, rightSide: Readonly<Float64Array>): Float64Array {
  const { size, factors, rowOrder } = lu;
  if (rightSide.length !== size)
    throw new RangeError(`right side has ${rightSide.length} values; the matrix has ${size} rows.`);
  const x = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const row = i * size;
    x[i] = rightSide[rowOrder[i]] - rowTimes(factors, row, x, 0, i);
  }
  for (let i = size - 1; i >= 0; i--) {
    const row = i * size;
    x[i] = (x[i] - rowTimes(factors, row, x, i + 1, size)) / factors[row + i];
  }
  return x;
}

/** Sum of a row's values times those of x from one column up to another, in four sums that do not wait for each other. */
function rowTimes(factors: Float64Array, row: number, x: Float64Array, from: number, to: number): number {
  let j = from;
  let sum0 = 0;
  let sum1 = 0;
  let sum2 = 0;
  let sum3 = 0;
  for (; j + 3 < to; j += 4) {
    sum0 += factors[row + j] * x[j];
    sum1 += factors[row + j + 1] * x[j + 1];
    sum2 += factors[row + j + 2] * x[j + 2];
    sum3 += factors[row + j + 3] * x[j + 3];
  }
  for (; j < to; j++) sum0 += factors[row + j] * x[j];
  return sum0 + sum1 + (sum2 + sum3);
}
