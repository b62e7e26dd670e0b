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
    let sum = rightSide[rowOrder[i]];
    for (let j = 0; j < i; j++) sum -= factors[row + j] * x[j];
    x[i] = sum;
  }
  for (let i = size - 1; i >= 0; i--) {
    const row = i * size;
    let sum = x[i];
    for (let j = i + 1; j < size; j++) sum -= factors[row + j] * x[j];
    x[i] = sum / factors[row + i];
  }
  return x;
}
