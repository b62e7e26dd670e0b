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

/** An error point in correlation lengths, so that many covariances of it are cheap. */
export interface ScaledPoint {
  readonly logReynolds: number;
  readonly logRoughness: number;
  readonly turbulence: number;
  readonly logLengthToHeight: number;
  readonly cornerRadiusToHeight: number;
  readonly regime: Regime;
  readonly shape: ErrorPoint["shape"];
  /** Standard deviation of the level error there. */
  readonly deviation: number;
}

export function scaledPoint(point: ErrorPoint, parameters: ErrorParameters): ScaledPoint {
  const lengths = parameters.correlationLengths;
  return {
    logReynolds: point.logReynolds / lengths.logReynolds,
    logRoughness: point.logRoughness / lengths.logRoughness,
    turbulence: point.turbulence / lengths.turbulence,
    logLengthToHeight: point.logLengthToHeight / lengths.logLengthToHeight,
    cornerRadiusToHeight: point.cornerRadiusToHeight / lengths.cornerRadiusToHeight,
    regime: point.regime,
    shape: point.shape,
    deviation: levelDeviation(point.regime, parameters),
  };
}

/**
 * Covariance of the level errors of two answers, without what each has to itself: squared exponential in the distances
 * over their correlation lengths (Rasmussen & Williams 2006, eq. 5.1), less between regimes and kinds of shape.
 */
export function scaledCovariance(a: ScaledPoint, b: ScaledPoint, parameters: ErrorParameters): number {
  const between = a.regime === b.regime ? 1 : parameters.regimeCorrelation;
  return a.deviation * b.deviation * between * likeness(a, b, parameters);
}

export function levelCovariance(a: ErrorPoint, b: ErrorPoint, parameters: ErrorParameters): number {
  return scaledCovariance(scaledPoint(a, parameters), scaledPoint(b, parameters), parameters);
}

/** How alike two bodies in their streams are, whatever their regimes: the correlation of the shifts of their crises. */
export function bodyCorrelation(a: ErrorPoint, b: ErrorPoint, parameters: ErrorParameters): number {
  return likeness(scaledPoint(a, parameters), scaledPoint(b, parameters), parameters);
}

function likeness(a: ScaledPoint, b: ScaledPoint, { shapeCorrelation }: ErrorParameters): number {
  const reynolds = a.logReynolds - b.logReynolds;
  const roughness = a.logRoughness - b.logRoughness;
  const turbulence = a.turbulence - b.turbulence;
  const length = a.logLengthToHeight - b.logLengthToHeight;
  const corner = a.cornerRadiusToHeight - b.cornerRadiusToHeight;
  const square =
    reynolds * reynolds + roughness * roughness + turbulence * turbulence + length * length + corner * corner;
  return Math.exp(-square / 2) * (a.shape === b.shape ? 1 : shapeCorrelation);
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
