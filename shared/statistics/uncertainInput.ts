/** How the values that could be attributed to an input are spread. Source: JCGM 100:2008, 4.3; JCGM 101:2008, 6.4. */
export type InputDistribution = "normal" | "rectangular" | "triangular" | "arcsine" | "studentT";

/** One input of a measurement model. */
export interface UncertainInput {
  /** Tells inputs apart, for correlations and budgets. */
  readonly key: string;
  /** For people. */
  readonly name: string;
  readonly value: number;
  /** Standard uncertainty in the input's own unit, 0 or more. For studentT: scale s / sqrt(n), as in JCGM 100:2008, 4.2.3. */
  readonly standardUncertainty: number;
  /** Above 0; Infinity where the uncertainty itself is taken as known. */
  readonly degreesOfFreedom: number;
  readonly distribution: InputDistribution;
}

/** Correlation coefficient of two inputs, -1 to 1. Source: JCGM 100:2008, 5.2.2. */
export interface InputCorrelation {
  readonly between: readonly [string, string];
  readonly coefficient: number;
}

/** y = f(x), x in the order of the inputs. Finite wherever the inputs can reasonably lie. */
export type MeasurementModel = (x: Readonly<Float64Array>) => number;

/** An input that is known exactly as far as the budget goes. */
export function exactInput(key: string, name: string, value: number): UncertainInput {
  return {
    key,
    name,
    value,
    standardUncertainty: 0,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    distribution: "normal",
  };
}
