import { problem, type Result, success } from "../result";

export interface KrylovOptions {
  /** Stop when |b - A x| <= tolerance |b|. */
  readonly tolerance?: number;
  /** Largest number of steps, each one product with the matrix. */
  readonly maximumSteps?: number;
  /** Where to start from, shape [size]; zero when absent. */
  readonly start?: Readonly<Float64Array>;
}

/**
 * Solves A x = b for a dense row-major matrix by GMRES without restart. For a second-kind integral equation the
 * number of steps does not grow with the number of nodes, so the cost is a few products with the matrix.
 * Source: Saad & Schultz (1986), SIAM J. Sci. Stat. Comput. 7, 856-869.
 * @param matrix row-major, shape [size * size]
 * @param rightSide shape [size]
 * @returns x, shape [size]; a problem "no-convergence" with the residual reached when the steps run out, "singular" when
 * the matrix has no inverse on the space it spans with the right side
 */
export function solveByGmres(
  matrix: Readonly<Float64Array>,
  rightSide: Readonly<Float64Array>,
  options: KrylovOptions = {},
): Result<Float64Array> {
  const size = rightSide.length;
  if (matrix.length !== size * size)
    throw new RangeError(`matrix has ${matrix.length} values; ${size} rows need ${size * size}.`);
  const tolerance = options.tolerance ?? 1e-12;
  const maximumSteps = Math.min(options.maximumSteps ?? 80, size);
  const x = options.start ? Float64Array.from(options.start) : new Float64Array(size);
  const residual = options.start ? difference(rightSide, multiply(matrix, x)) : Float64Array.from(rightSide);
  const scale = norm(rightSide);
  let beta = norm(residual);
  if (!(beta > tolerance * scale)) return success(x);

  const basis: Float64Array[] = [residual.map((value) => value / beta)];
  const hessenberg: Float64Array[] = [];
  const cosines: number[] = [];
  const sines: number[] = [];
  const rotatedRight = [beta];
  for (let step = 0; step < maximumSteps; step++) {
    const next = multiply(matrix, basis[step]);
    const negligible = 1e-14 * norm(next);
    const column = new Float64Array(step + 2);
    // Twice is enough: a second Gram-Schmidt pass keeps the basis orthogonal to rounding.
    for (let pass = 0; pass < 2; pass++) {
      for (let i = 0; i <= step; i++) {
        const overlap = dot(next, basis[i]);
        column[i] += overlap;
        for (let j = 0; j < size; j++) next[j] -= overlap * basis[i][j];
      }
    }
    column[step + 1] = norm(next);
    const breakdown = !(column[step + 1] > negligible);
    if (!breakdown) {
      for (let j = 0; j < size; j++) next[j] /= column[step + 1];
      basis.push(next);
    }
    for (let i = 0; i < step; i++) {
      const upper = cosines[i] * column[i] + sines[i] * column[i + 1];
      column[i + 1] = -sines[i] * column[i] + cosines[i] * column[i + 1];
      column[i] = upper;
    }
    const length = Math.hypot(column[step], column[step + 1]);
    if (breakdown && !(length > negligible)) {
      return problem("singular", `the ${size} x ${size} matrix is singular: its products with the right side repeat.`);
    }
    cosines.push(column[step] / length);
    sines.push(column[step + 1] / length);
    column[step] = length;
    hessenberg.push(column);
    rotatedRight.push(-sines[step] * rotatedRight[step]);
    rotatedRight[step] *= cosines[step];
    beta = Math.abs(rotatedRight[step + 1]);
    if (beta <= tolerance * scale || breakdown) {
      addCombination(x, basis, hessenberg, rotatedRight);
      return success(x);
    }
  }
  return problem(
    "no-convergence",
    `the dense solve stopped after ${maximumSteps} steps with a relative residual of ${(beta / scale).toExponential(1)}; ${tolerance} was asked for.`,
  );
}

function addCombination(x: Float64Array, basis: Float64Array[], hessenberg: Float64Array[], right: number[]): void {
  const count = hessenberg.length;
  const weights = new Float64Array(count);
  for (let i = count - 1; i >= 0; i--) {
    let sum = right[i];
    for (let j = i + 1; j < count; j++) sum -= hessenberg[j][i] * weights[j];
    weights[i] = sum / hessenberg[i][i];
  }
  for (let i = 0; i < count; i++) {
    const vector = basis[i];
    for (let j = 0; j < x.length; j++) x[j] += weights[i] * vector[j];
  }
}

/** A v for a row-major matrix, shape [size]. Four partial sums, so that the additions can overlap. */
function multiply(matrix: Readonly<Float64Array>, vector: Readonly<Float64Array>): Float64Array {
  const size = vector.length;
  const out = new Float64Array(size);
  const even = size - (size % 4);
  for (let i = 0; i < size; i++) {
    const row = i * size;
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    let s3 = 0;
    for (let j = 0; j < even; j += 4) {
      s0 += matrix[row + j] * vector[j];
      s1 += matrix[row + j + 1] * vector[j + 1];
      s2 += matrix[row + j + 2] * vector[j + 2];
      s3 += matrix[row + j + 3] * vector[j + 3];
    }
    for (let j = even; j < size; j++) s0 += matrix[row + j] * vector[j];
    out[i] = s0 + s1 + (s2 + s3);
  }
  return out;
}

function dot(a: Readonly<Float64Array>, b: Readonly<Float64Array>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

function norm(a: Readonly<Float64Array>): number {
  return Math.sqrt(dot(a, a));
}

function difference(a: Readonly<Float64Array>, b: Readonly<Float64Array>): Float64Array {
  return a.map((value, i) => value - b[i]);
}
