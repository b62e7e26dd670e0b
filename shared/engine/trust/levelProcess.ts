import { choleskyOf, solveLowerInPlace, solveUpperInPlace } from "../../numerics/cholesky";
import {
  type ErrorParameters,
  levelCovariance,
  type ScaledPoint,
  scaledCovariance,
  scaledPoint,
  sourceCovariance,
} from "./errorCovariance";
import type { ErrorPoint } from "./errorPoint";

/** A measured error of the engine away from a crisis. */
export interface LevelDatum {
  readonly point: ErrorPoint;
  /** ln(measured Cd / the engine's). */
  readonly error: number;
  /** Standard deviation of the measured value's own scatter, in ln Cd. */
  readonly scatter: number;
  /** Values of one source share its bias. */
  readonly source: string;
}

/** The level error as a Gaussian process conditioned on data. Rasmussen & Williams (2006), algorithm 2.1. */
export interface LevelProcess {
  readonly parameters: ErrorParameters;
  readonly data: readonly LevelDatum[];
  /** Where the data lie, in correlation lengths. */
  readonly scaled: readonly ScaledPoint[];
  /** Cholesky factor of the data's covariance, shape [data * data]. */
  readonly factor: Readonly<Float64Array>;
  /** Inverse covariance times the errors, shape [data]. */
  readonly weights: Readonly<Float64Array>;
}

/** Mean and covariance of the level errors at some points. */
export interface LevelErrors {
  readonly mean: Float64Array;
  /** Row by row, shape [points * points]. */
  readonly covariance: Float64Array;
}

/** Covariance of measured errors: level, source bias, and what each has to itself. Shape [data * data]. */
export function datumCovariance(data: readonly LevelDatum[], parameters: ErrorParameters): Float64Array {
  const n = data.length;
  const scaled = data.map(({ point }) => scaledPoint(point, parameters));
  const sources = new Map(data.map(({ source }, i) => [source, i]));
  const source = Int32Array.from(data, (datum) => sources.get(datum.source)!);
  const matrix = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let covariance = scaledCovariance(scaled[i], scaled[j], parameters);
      if (source[i] === source[j]) {
        covariance += sourceCovariance(data[i].point.regime, data[j].point.regime, parameters);
      }
      if (i === j) covariance += data[i].scatter ** 2 + parameters.singleDeviation ** 2;
      matrix[i * n + j] = covariance;
      matrix[j * n + i] = covariance;
    }
  }
  return matrix;
}

export function conditionLevel(data: readonly LevelDatum[], parameters: ErrorParameters): LevelProcess {
  const factor = choleskyOf(datumCovariance(data, parameters), data.length);
  const weights = Float64Array.from(data, ({ error }) => error);
  solveLowerInPlace(factor, weights);
  solveUpperInPlace(factor, weights);
  return { parameters, data, scaled: data.map(({ point }) => scaledPoint(point, parameters)), factor, weights };
}

/** Level errors at points, jointly; what a single answer has to itself is on the diagonal. */
export function levelErrorsAt(
  { parameters, data, scaled, factor, weights }: LevelProcess,
  points: readonly ErrorPoint[],
): LevelErrors {
  const m = points.length;
  const mean = new Float64Array(m);
  const covariance = new Float64Array(m * m);
  const reduced = points.map((point, i) => {
    const here = scaledPoint(point, parameters);
    const toData = Float64Array.from(scaled, (datum) => scaledCovariance(here, datum, parameters));
    for (let k = 0; k < toData.length; k++) mean[i] += toData[k] * weights[k];
    solveLowerInPlace(factor, toData);
    return toData;
  });
  for (let i = 0; i < m; i++) {
    for (let j = 0; j <= i; j++) {
      let value = levelCovariance(points[i], points[j], parameters);
      for (let k = 0; k < data.length; k++) value -= reduced[i][k] * reduced[j][k];
      if (i === j) value = Math.max(0, value) + parameters.singleDeviation ** 2;
      covariance[i * m + j] = value;
      covariance[j * m + i] = value;
    }
  }
  return { mean, covariance };
}
