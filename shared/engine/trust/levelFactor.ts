import { solveLowerInPlace } from "../../numerics/cholesky";
import { type LowRankFactor, pivotedCholesky } from "../../numerics/pivotedCholesky";
import { scaledCovariance, scaledPoint } from "./errorCovariance";
import type { ErrorPoint } from "./errorPoint";
import type { LevelProcess } from "./levelProcess";

/** Level errors at points as means and a factor of low rank, what a single answer has to itself left out. */
export interface LevelFactor extends LowRankFactor {
  /** Shape [points]. */
  readonly mean: Float64Array;
}

/** Part of the variance that a factor may leave out: far below what a draw can show. */
const LEFT_PART = 1e-9;

/** Level errors of many points, jointly: errors of neighbours are so alike that a few dozen draws stand for all. */
export function levelFactorAt(
  { parameters, scaled, factor, weights }: LevelProcess,
  points: readonly ErrorPoint[],
): LevelFactor {
  const here = points.map((point) => scaledPoint(point, parameters));
  const mean = new Float64Array(points.length);
  const reduced = here.map((point, i) => {
    const toData = Float64Array.from(scaled, (datum) => scaledCovariance(point, datum, parameters));
    for (let k = 0; k < toData.length; k++) mean[i] += toData[k] * weights[k];
    solveLowerInPlace(factor, toData);
    return toData;
  });
  const covariance = (i: number, j: number) => {
    let value = scaledCovariance(here[i], here[j], parameters);
    const a = reduced[i];
    const b = reduced[j];
    for (let k = 0; k < a.length; k++) value -= a[k] * b[k];
    return value;
  };
  const diagonal = Float64Array.from(here, (_, i) => covariance(i, i));
  const column = (j: number) => Float64Array.from(here, (_, i) => covariance(i, j));
  return { mean, ...pivotedCholesky(diagonal, column, LEFT_PART) };
}
