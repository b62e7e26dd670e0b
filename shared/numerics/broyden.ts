import { factorInPlace, solveFactored } from "./lu";

/** Residuals at unknowns, shape [size] both; null where there are none, or where the search is to end. */
export type Residuals = (unknowns: Readonly<Float64Array>) => Readonly<Float64Array> | null;

/**
 * Slopes of residuals by differences to one side.
 * @param at        unknowns, shape [size]
 * @param residuals there, shape [size]
 * @param step      of each unknown, in its units
 * @returns row-major, shape [size * size]: row i holds residual i, column j the unknown j; null where a residual is missing
 */
export function differenceSlopes(
  residualsAt: Residuals,
  at: Readonly<Float64Array>,
  residuals: Readonly<Float64Array>,
  step: number,
): Float64Array | null {
  const size = at.length;
  const slopes = new Float64Array(size * size);
  for (let j = 0; j < size; j++) {
    const beside = Float64Array.from(at);
    beside[j] += step;
    const there = residualsAt(beside);
    if (there === null) return null;
    for (let i = 0; i < size; i++) slopes[i * size + j] = (there[i] - residuals[i]) / step;
  }
  return slopes;
}

export interface BroydenOptions {
  /** Whether residuals are small enough. */
  readonly isFound: (residuals: Readonly<Float64Array>) => boolean;
  /** A step that changes an unknown by more than this ends the search. */
  readonly largestStep: number;
  readonly mostSteps: number;
}

/**
 * Solves as many equations as there are unknowns by Newton's method, its matrix of slopes taken once and kept up by the
 * good one of Broyden's two updates, so that a step costs one evaluation of the residuals.
 * Source: Broyden (1965), Math. Comp. 19, 577-593.
 * @param start     unknowns, shape [size]
 * @param residuals there, shape [size]
 * @param slopes    there, as {@link differenceSlopes} gives them
 * @returns unknowns whose residuals are small enough, shape [size]; null where a step is too long, the matrix singular,
 * the residuals end or the steps run out
 */
export function solveByBroyden(
  residualsAt: Residuals,
  start: Readonly<Float64Array>,
  residuals: Readonly<Float64Array>,
  slopes: Readonly<Float64Array>,
  { isFound, largestStep, mostSteps }: BroydenOptions,
): Float64Array | null {
  const size = start.length;
  if (residuals.length !== size || slopes.length !== size * size) {
    throw new RangeError(
      `${size} unknowns have ${residuals.length} residuals and ${slopes.length} slopes; they need ${size} and ${size * size}.`,
    );
  }
  const matrix = Float64Array.from(slopes);
  const here = Float64Array.from(start);
  let found = residuals;
  for (let count = 0; !isFound(found); count++) {
    if (count === mostSteps) return null;
    const step = newtonStep(matrix, found);
    if (step === null || !step.every((each) => Math.abs(each) <= largestStep)) return null;
    for (let i = 0; i < size; i++) here[i] += step[i];
    const next = residualsAt(here);
    if (next === null) return null;
    const square = step.reduce((sum, each) => sum + each * each, 0);
    // What the old matrix foresaw for the new residuals was 0: all of them are its error along the step.
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) matrix[i * size + j] += (next[i] * step[j]) / square;
    }
    found = next;
  }
  return here;
}

function newtonStep(matrix: Readonly<Float64Array>, residuals: Readonly<Float64Array>): Float64Array | null {
  const negative = residuals.map((each) => -each);
  try {
    return solveFactored(factorInPlace(Float64Array.from(matrix), residuals.length), negative);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
