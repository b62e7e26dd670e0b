import { problem, type Result, success } from "../result";
import { correlatedDraws } from "./correlatedDraws";
import type { FirstOrderUncertainty } from "./firstOrder";
import { randomDraws } from "./randomDraws";
import type { InputCorrelation, MeasurementModel, UncertainInput } from "./uncertainInput";

/** A result with its uncertainty by propagating distributions. */
export interface MonteCarloUncertainty {
  readonly samples: number;
  readonly seed: number;
  readonly mean: number;
  /**
   * null where none exists: an input is spread by Student's t of 2 degrees of freedom or fewer, which has no finite
   * variance, and what the samples give would grow with their number. Source: JCGM 101:2008, 6.4.9.4.
   */
  readonly standardUncertainty: number | null;
  readonly coverage: number;
  /** Ends of the interval with equal parts outside on both sides. */
  readonly low: number;
  readonly high: number;
  /** Ends of the shortest interval. */
  readonly shortestLow: number;
  readonly shortestHigh: number;
}

export const fewestSamples = 1000;
export const mostSamples = 1_000_000;

/**
 * Propagation of distributions with a fixed number of samples. Source: JCGM 101:2008, clause 7 (7.7.2 for the equal
 * tails, 7.7.3 for the shortest interval).
 * @param samples whole number from 1000 to 1e6
 * @param seed    whole number
 * @returns a problem when a correlation cannot be drawn or a sample of the model is not finite
 */
export function propagateDistributions(
  model: MeasurementModel,
  inputs: readonly UncertainInput[],
  correlations: readonly InputCorrelation[],
  samples: number,
  seed: number,
  coverage = 0.95,
): Result<MonteCarloUncertainty> {
  if (!(Number.isInteger(samples) && samples >= fewestSamples && samples <= mostSamples)) {
    throw new RangeError(
      `samples are ${samples}; they must be a whole number from ${fewestSamples} to ${mostSamples}.`,
    );
  }
  if (!(coverage > 0 && coverage < 1)) throw new RangeError(`coverage is ${coverage}; it must be above 0 and below 1.`);
  const draw = correlatedDraws(inputs, correlations, randomDraws(seed));
  if (!draw.ok) return draw;
  const x = new Float64Array(inputs.length);
  const results = new Float64Array(samples);
  let sum = 0;
  for (let s = 0; s < samples; s++) {
    draw.value(x);
    results[s] = model(x);
    sum += results[s];
  }
  if (!Number.isFinite(sum)) {
    return problem("model", "a sample of the result is not finite: an uncertainty reaches values that cannot be");
  }
  const mean = sum / samples;
  let squares = 0;
  for (const result of results) squares += (result - mean) ** 2;
  results.sort();
  const inside = Math.round(coverage * samples);
  const start = Math.floor((samples - inside) / 2);
  let shortest = 0;
  for (let i = 1; i + inside < samples; i++) {
    if (results[i + inside] - results[i] < results[shortest + inside] - results[shortest]) shortest = i;
  }
  return success({
    samples,
    seed,
    mean,
    standardUncertainty: inputs.some(hasNoVariance) ? null : Math.sqrt(squares / (samples - 1)),
    coverage,
    low: results[start],
    high: results[Math.min(start + inside, samples - 1)],
    shortestLow: results[shortest],
    shortestHigh: results[Math.min(shortest + inside, samples - 1)],
  });
}

function hasNoVariance({ distribution, degreesOfFreedom, standardUncertainty }: UncertainInput): boolean {
  return distribution === "studentT" && degreesOfFreedom <= 2 && standardUncertainty > 0;
}

/**
 * Half a unit of the second digit of a standard uncertainty. Source: JCGM 101:2008, 7.9.2, with two significant digits.
 * @param standardUncertainty above 0
 */
export function numericalTolerance(standardUncertainty: number, significantDigits = 2): number {
  const digits = standardUncertainty.toExponential(significantDigits - 1);
  return 0.5 * 10 ** (Number(digits.split("e")[1]) - significantDigits + 1);
}

/**
 * Whether the law of propagation gives the interval that the propagation of distributions gives. Source: JCGM 101:2008,
 * clause 8.
 * @param significantDigits of the standard uncertainty; two need about a million samples, one about ten thousand
 */
export function firstOrderIsValidated(
  firstOrder: FirstOrderUncertainty,
  monteCarlo: MonteCarloUncertainty,
  significantDigits: 1 | 2 = 1,
): boolean {
  // Without a standard uncertainty there is no digit to agree to.
  if (monteCarlo.standardUncertainty === null) return false;
  if (!(monteCarlo.standardUncertainty > 0)) return true;
  const tolerance = numericalTolerance(monteCarlo.standardUncertainty, significantDigits);
  const { value, expandedUncertainty } = firstOrder;
  return (
    Math.abs(value - expandedUncertainty - monteCarlo.low) <= tolerance &&
    Math.abs(value + expandedUncertainty - monteCarlo.high) <= tolerance
  );
}
