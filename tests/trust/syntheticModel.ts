import type { Regime } from "../../shared/engine/solution";
import { type ErrorParameters, levelCovariance, sourceCovariance } from "../../shared/engine/trust/errorCovariance";
import type { ErrorPoint } from "../../shared/engine/trust/errorPoint";
import type { LevelDatum } from "../../shared/engine/trust/levelProcess";
import { choleskyOf } from "../../shared/numerics/cholesky";
import type { RandomDraws } from "../../shared/statistics/randomDraws";

/** Parameters of a made-up engine, chosen round. */
export const roundParameters: ErrorParameters = {
  levelDeviation: { subcritical: 0.2, other: 0.3 },
  correlationLengths: {
    logReynolds: 1.5,
    logRoughness: 1,
    turbulence: 1,
    logLengthToHeight: 0.6,
    cornerRadiusToHeight: 0.2,
  },
  regimeCorrelation: 0.3,
  shapeCorrelation: 0.4,
  sourceDeviation: { subcritical: 0.05, supercritical: 0.2, transcritical: 0.1 },
  singleDeviation: 0.02,
  crisisShift: {
    "circle in a quiet stream": { mean: 0, deviation: 0.2 },
    "circle in a turbulent stream": { mean: 0, deviation: 0.4 },
    "other section": { mean: 0, deviation: 0.4 },
  },
};

export function errorPointOf(part: Partial<ErrorPoint> = {}): ErrorPoint {
  return {
    regime: "subcritical",
    shape: "rectangle",
    logReynolds: Math.log(1e5),
    logRoughness: -5,
    turbulence: Math.log(2),
    logLengthToHeight: 0,
    cornerRadiusToHeight: 0.1,
    ...part,
  };
}

/** A point anywhere among the published ones. */
export function randomPoint(draws: RandomDraws): ErrorPoint {
  const regimes: readonly Regime[] = ["subcritical", "supercritical", "transcritical"];
  return errorPointOf({
    regime: regimes[draws.below(regimes.length)],
    shape: draws.uniform() < 0.5 ? "rectangle" : "ellipse",
    logReynolds: Math.log(1e4) + 5 * draws.uniform(),
    logLengthToHeight: 1.5 * draws.uniform(),
    cornerRadiusToHeight: 0.5 * draws.uniform(),
  });
}

/** Level errors, one world of them, at some points. */
export function drawnLevels(
  points: readonly ErrorPoint[],
  parameters: ErrorParameters,
  draws: RandomDraws,
): Float64Array {
  const n = points.length;
  const covariance = new Float64Array(n * n);
  points.forEach((a, i) => {
    points.forEach((b, j) => {
      covariance[i * n + j] = levelCovariance(a, b, parameters) + (i === j ? parameters.singleDeviation ** 2 : 0);
    });
  });
  return timesDraws(choleskyOf(covariance, n), n, draws);
}

/** Biases of one source in the three regimes. */
export function drawnBias(parameters: ErrorParameters, draws: RandomDraws): (regime: Regime) => number {
  const regimes: readonly Regime[] = ["subcritical", "supercritical", "transcritical"];
  const covariance = Float64Array.from(regimes.flatMap((a) => regimes.map((b) => sourceCovariance(a, b, parameters))));
  const bias = timesDraws(choleskyOf(covariance, regimes.length), regimes.length, draws);
  return (regime) => bias[regimes.indexOf(regime)];
}

function timesDraws(factor: Readonly<Float64Array>, size: number, draws: RandomDraws): Float64Array {
  const z = Float64Array.from({ length: size }, () => draws.normal());
  return Float64Array.from({ length: size }, (_, i) => {
    let sum = 0;
    for (let k = 0; k <= i; k++) sum += factor[i * size + k] * z[k];
    return sum;
  });
}

/** What some sources measured of one world of level errors. */
export function measuredBy(
  sources: readonly string[],
  points: readonly ErrorPoint[],
  errors: Readonly<Float64Array>,
  scatter: number,
  parameters: ErrorParameters,
  draws: RandomDraws,
): LevelDatum[] {
  const biases = new Map(sources.map((source) => [source, drawnBias(parameters, draws)]));
  return points.map((point, i) => {
    const source = sources[i % sources.length];
    return { point, source, scatter, error: errors[i] + biases.get(source)!(point.regime) + scatter * draws.normal() };
  });
}
