/**
 * Lower factor L of a symmetric positive definite matrix, A = L L^T. Only the lower triangle of A is read.
 * Source: Golub & Van Loan (1996), Matrix Computations, algorithm 4.2.1.
 * @param matrix row by row, shape [size * size]
 * @returns L row by row, its upper triangle zero
 * @throws RangeError when the matrix is not positive definite
 */
export function choleskyOf(matrix: Readonly<Float64Array>, size: number): Float64Array {
  const lower = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    const row = i * size;
    for (let j = 0; j <= i; j++) {
      const other = j * size;
      let rest = matrix[row + j];
      for (let k = 0; k < j; k++) rest -= lower[row + k] * lower[other + k];
      if (i !== j) lower[row + j] = rest / lower[other + j];
      else if (rest > 0) lower[row + i] = Math.sqrt(rest);
      else throw new RangeError(`the matrix is not positive definite: ${rest} is left of row ${i}.`);
    }
  }
  return lower;
}

/** x of L x = b, in place of b. @param lower shape [size * size], size that of b */
export function solveLowerInPlace(lower: Readonly<Float64Array>, b: Float64Array): void {
  const size = b.length;
  for (let i = 0; i < size; i++) {
    let rest = b[i];
    for (let k = 0; k < i; k++) rest -= lower[i * size + k] * b[k];
    b[i] = rest / lower[i * size + i];
  }
}

/** x of L^T x = b, in place of b. */
export function solveUpperInPlace(lower: Readonly<Float64Array>, b: Float64Array): void {
  const size = b.length;
  for (let i = size - 1; i >= 0; i--) {
    const value = b[i] / lower[i * size + i];
    b[i] = value;
    for (let k = 0; k < i; k++) b[k] -= lower[i * size + k] * value;
  }
}
