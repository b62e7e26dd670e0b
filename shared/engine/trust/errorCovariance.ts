import type { Regime } from "../solution";
import type { CrisisKind } from "./bandTable";
import type { ErrorPoint } from "./errorPoint";

/** Standard deviations, correlation lengths and correlations of the engine's errors in ln Cd, fitted by `npm run trust`. */
export interface ErrorParameters {
  /** Of the level, where both layers separate laminar and everywhere else. */
  readonly levelDeviation: { readonly subcritical: number; readonly other: number };
  readonly correlationLengths: {
    readonly logReynolds: number;
    readonly logRoughness: number;
    readonly turbulence: number;
    readonly logLengthToHeight: number;
    readonly cornerRadiusToHeight: number;
  };
  /** Factor of the correlation between two regimes, 0 to 1. */
  readonly regimeCorrelation: number;
  /** The same between two kinds of shape. */
  readonly shapeCorrelation: number;
  /** Of what a whole tunnel or table is off by. */
  readonly sourceDeviation: {
    readonly subcritical: number;
    readonly supercritical: number;
    readonly transcritical: number;
  };
  /** Of a single answer of the engine, shared with no other. */
  readonly singleDeviation: number;
  /** Mean and standard deviation of the shift of a crisis: ln(the engine's critical Re / the true one). */
  readonly crisisShift: Readonly<Record<CrisisKind, { readonly mean: number; readonly deviation: number }>>;
}

/**
 * Correlation of the level errors of two answers: squared exponential in the distances over their correlation lengths
 * (Rasmussen & Williams 2006, eq. 5.1), less between regimes and kinds of shape.
 */
export function levelCorrelation(a: ErrorPoint, b: ErrorPoint, parameters: ErrorParameters): number {
  const { regimeCorrelation } = parameters;
  return bodyCorrelation(a, b, parameters) * (a.regime === b.regime ? 1 : regimeCorrelation);
}

/** The same whatever the regimes are: how alike two bodies in their streams are, for the shift of their crises. */
export function bodyCorrelation(a: ErrorPoint, b: ErrorPoint, parameters: ErrorParameters): number {
  const lengths = parameters.correlationLengths;
  const square =
    ((a.logReynolds - b.logReynolds) / lengths.logReynolds) ** 2 +
    ((a.logRoughness - b.logRoughness) / lengths.logRoughness) ** 2 +
    ((a.turbulence - b.turbulence) / lengths.turbulence) ** 2 +
    ((a.logLengthToHeight - b.logLengthToHeight) / lengths.logLengthToHeight) ** 2 +
    ((a.cornerRadiusToHeight - b.cornerRadiusToHeight) / lengths.cornerRadiusToHeight) ** 2;
  return Math.exp(-square / 2) * (a.shape === b.shape ? 1 : parameters.shapeCorrelation);
}

/** Covariance of the level errors of two answers, without what each has to itself. */
export function levelCovariance(a: ErrorPoint, b: ErrorPoint, parameters: ErrorParameters): number {
  return (
    levelDeviation(a.regime, parameters) * levelDeviation(b.regime, parameters) * levelCorrelation(a, b, parameters)
  );
}

function levelDeviation(regime: Regime, { levelDeviation: { subcritical, other } }: ErrorParameters): number {
  return regime === "subcritical" ? subcritical : other;
}

/** Standard deviation of a source's bias in a regime; of the critical one as past the crisis, where tunnels differ most. */
export function sourceDeviation(regime: Regime, { sourceDeviation: own }: ErrorParameters): number {
  return regime === "critical" ? own.supercritical : own[regime];
}

/** Covariance of the biases of one source in two regimes. */
export function sourceCovariance(a: Regime, b: Regime, parameters: ErrorParameters): number {
  const both = sourceDeviation(a, parameters) * sourceDeviation(b, parameters);
  return a === b ? both : both * parameters.regimeCorrelation;
}
