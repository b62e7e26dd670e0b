import type { InputCorrelation } from "./uncertainInput";

type Matrix = readonly (readonly number[])[];

/** Correlation matrix of the keys, in their order; pairs that are not named are independent, of a pair named twice the first counts. */
export function correlationMatrix(keys: readonly string[], correlations: readonly InputCorrelation[]): number[][] {
  return keys.map((one) =>
    keys.map((other) => {
      if (one === other) return 1;
      const pair = correlations.find(({ between }) => between.includes(one) && between.includes(other));
      return pair?.coefficient ?? 0;
    }),
  );
}

/** Lower factor L of a matrix L L^T; null when it is not positive semidefinite. Entries of size 1. */
export function choleskyFactor(matrix: Matrix): number[][] | null {
  const rounding = 1e-12;
  const lower: number[][] = matrix.map(() => []);
  for (let i = 0; i < matrix.length; i++) {
    for (let j = 0; j <= i; j++) {
      let rest = matrix[i][j];
      for (let k = 0; k < j; k++) rest -= lower[i][k] * lower[j][k];
      if (i !== j) {
        if (lower[j][j] === 0 && Math.abs(rest) > rounding) return null;
        lower[i][j] = lower[j][j] === 0 ? 0 : rest / lower[j][j];
      } else {
        if (rest < -rounding) return null;
        lower[i][i] = rest > rounding ? Math.sqrt(rest) : 0;
      }
    }
  }
  return lower;
}

/**
 * Coefficients that a pair can have while all others of the matrix stay: given the rest of the variables, what is left of
 * the two can be correlated by -1 to 1 and no more.
 * @param i, j different rows of a symmetric matrix with ones on its diagonal
 * @returns lowest and highest coefficient; null when the others are impossible already
 */
export function possibleCoefficients(matrix: Matrix, i: number, j: number): readonly [number, number] | null {
  const others = matrix.map((_, k) => k).filter((k) => k !== i && k !== j);
  const [ofOne, ofOther] = [i, j].map((last) => {
    const rows = [...others, last];
    return choleskyFactor(rows.map((row) => rows.map((column) => matrix[row][column])))?.at(-1);
  });
  if (ofOne === undefined || ofOther === undefined) return null;
  const explained = others.reduce((sum, _, k) => sum + ofOne[k] * ofOther[k], 0);
  const left = ofOne[others.length] * ofOther[others.length];
  return [Math.max(-1, explained - left), Math.min(1, explained + left)];
}
