import { problem, type Result, success } from "../result";
import { coverageFactor } from "./studentT";
import type { InputCorrelation, MeasurementModel, UncertainInput } from "./uncertainInput";

/** One part of an uncertainty budget. */
export interface BudgetPart {
  readonly key: string;
  readonly name: string;
  readonly value: number;
  readonly standardUncertainty: number;
  /** null: endless. */
  readonly degreesOfFreedom: number | null;
  /** c = df/dx. */
  readonly sensitivity: number;
  /** c u(x), signed, in the unit of the result. */
  readonly contribution: number;
  /** Part of the combined variance, 0 to 1 without correlations. All shares and the correlation's add up to 1. */
  readonly share: number;
}

/** A result with its uncertainty by the law of propagation. */
export interface FirstOrderUncertainty {
  readonly value: number;
  readonly combinedStandardUncertainty: number;
  /** null: endless. */
  readonly effectiveDegreesOfFreedom: number | null;
  readonly coverage: number;
  readonly coverageFactor: number;
  readonly expandedUncertainty: number;
  readonly parts: readonly BudgetPart[];
  /** Part of the combined variance that correlations add, or take away when below 0. */
  readonly correlationShare: number;
}

/**
 * Law of propagation of uncertainty. Source: JCGM 100:2008, eq. 10 and 13; sensitivities from the change of the model
 * when an input moves by its standard uncertainty (5.1.3, note 2); effective degrees of freedom by Welch and
 * Satterthwaite (G.2b), cut to a whole number (G.4.1, note); expanded uncertainty t_p(nu_eff) u_c (G.1d). The formula of
 * Welch and Satterthwaite holds for independent inputs; with correlations it is an approximation.
 * @param coverage above 0 and below 1
 * @returns a problem "model" when the model has no finite value, "correlation" when one names no input or is beyond -1 to 1
 */
export function propagateFirstOrder(
  model: MeasurementModel,
  inputs: readonly UncertainInput[],
  correlations: readonly InputCorrelation[] = [],
  coverage = 0.95,
): Result<FirstOrderUncertainty> {
  const x = Float64Array.from(inputs, ({ value }) => value);
  const value = model(x);
  if (!Number.isFinite(value)) return problem("model", `the result is ${value} at the best values of its inputs`);
  const sensitivities = inputs.map((input, i) => sensitivity(model, x, i, input.standardUncertainty));
  const contributions = inputs.map((input, i) => sensitivities[i] * input.standardUncertainty);
  const bad = contributions.findIndex((each) => !Number.isFinite(each));
  if (bad >= 0) return problem("model", `the result is not finite when "${inputs[bad].name}" moves by its uncertainty`);
  const crossed = crossTerms(inputs, contributions, correlations);
  if (!crossed.ok) return crossed;
  const independent = contributions.reduce((sum, each) => sum + each * each, 0);
  // A matrix of stated coefficients need not be a possible one: a negative sum is taken as 0.
  const variance = Math.max(0, independent + crossed.value);
  const combined = Math.sqrt(variance);
  const degrees = effectiveDegrees(inputs, contributions, combined);
  const factor = coverageFactor(coverage, degrees);
  const share = (part: number) => (variance > 0 ? part / variance : 0);
  return success({
    value,
    combinedStandardUncertainty: combined,
    effectiveDegreesOfFreedom: finiteOrNull(degrees),
    coverage,
    coverageFactor: factor,
    expandedUncertainty: factor * combined,
    parts: inputs.map(({ key, name, value: best, standardUncertainty, degreesOfFreedom }, i) => ({
      key,
      name,
      value: best,
      standardUncertainty,
      degreesOfFreedom: finiteOrNull(degreesOfFreedom),
      sensitivity: sensitivities[i],
      contribution: contributions[i],
      share: share(contributions[i] ** 2),
    })),
    correlationShare: share(crossed.value),
  });
}

/** Step of the sensitivity of an input without uncertainty, relative to its value. */
const smallStep = 1e-6;

function sensitivity(model: MeasurementModel, x: Float64Array, i: number, uncertainty: number): number {
  const best = x[i];
  const step = uncertainty > 0 ? uncertainty : smallStep * Math.max(Math.abs(best), smallStep);
  x[i] = best + step;
  const above = model(x);
  x[i] = best - step;
  const below = model(x);
  x[i] = best;
  return (above - below) / (2 * step);
}

/** Twice the sum over correlated pairs of c_i u_i c_j u_j r_ij. */
function crossTerms(
  inputs: readonly UncertainInput[],
  contributions: readonly number[],
  correlations: readonly InputCorrelation[],
): Result<number> {
  let sum = 0;
  for (const { between, coefficient } of correlations) {
    const [i, j] = between.map((key) => inputs.findIndex((input) => input.key === key));
    if (i < 0 || j < 0 || i === j) {
      return problem(
        "correlation",
        `a correlation is between "${between[0]}" and "${between[1]}"; both must be inputs`,
      );
    }
    if (!(Math.abs(coefficient) <= 1)) {
      return problem("correlation", `a correlation coefficient is ${coefficient}; it must be from -1 to 1`);
    }
    sum += 2 * contributions[i] * contributions[j] * coefficient;
  }
  return success(sum);
}

function effectiveDegrees(
  inputs: readonly UncertainInput[],
  contributions: readonly number[],
  combined: number,
): number {
  const sum = inputs.reduce((total, { degreesOfFreedom }, i) => total + contributions[i] ** 4 / degreesOfFreedom, 0);
  if (!(sum > 0)) return Number.POSITIVE_INFINITY;
  const degrees = combined ** 4 / sum;
  // Cut, but not by what only rounding makes of a whole number.
  return Math.max(Math.floor(degrees * (1 + 1e-9)), 1);
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
