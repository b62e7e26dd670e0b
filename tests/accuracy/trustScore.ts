import type { Regime } from "../../shared/engine/solution";
import { crisisKinds } from "../../shared/engine/trust/bandTable";
import { dragAt } from "../../shared/engine/trust/dragKnots";
import { type ErrorParameters, levelCovariance, sourceDeviation } from "../../shared/engine/trust/errorCovariance";
import { errorPoint } from "../../shared/engine/trust/errorPoint";
import {
  conditionLevel,
  datumCovariance,
  type LevelDatum,
  type LevelProcess,
} from "../../shared/engine/trust/levelProcess";
import { standardShifts } from "../../shared/engine/trust/shiftNodes";
import { choleskyOf, solveLowerInPlace, solveUpperInPlace } from "../../shared/numerics/cholesky";
import { mixtureDensity, type NormalMixture } from "../../shared/statistics/normalMixture";
import { groupBy } from "./groupBy";
import { levelVector, startParameters } from "./trustParameters";
import type { CrisisPoint, TrustPoint } from "./trustPoints";

/** Level errors of a point in the regimes that it may be in, from the other experiments. */
export type LeftOutLevel = ReadonlyMap<Regime, { readonly mean: number; readonly variance: number }>;

/** The level process of all experiments but one. */
export function withoutExperiment(
  data: readonly LevelDatum[],
  experiment: string,
  parameters: ErrorParameters,
): LevelProcess {
  return conditionLevel(
    data.filter(({ source }) => source !== experiment),
    parameters,
  );
}

/** No crisis is taken to be further off than this in ln Re. */
const furthestShift = 1.2;
const shiftSteps = 24;

/** Regimes that a point may be in. */
function reachableRegimes({ knots, condition }: TrustPoint): Regime[] {
  const here = Math.log(condition.reynolds);
  const shifts = Array.from({ length: shiftSteps + 1 }, (_, i) => furthestShift * ((2 * i) / shiftSteps - 1));
  return [...new Set(shifts.map((shift) => dragAt(knots, here + shift).regime))];
}

/**
 * Level errors of every point with its whole experiment left out, from one inverse of the covariance of all data: rows
 * that are left out go by their block (Rasmussen & Williams 2006, 5.4.2, for blocks of more than one).
 */
export function leftOutLevels(
  points: readonly TrustPoint[],
  data: readonly LevelDatum[],
  parameters: ErrorParameters,
): Map<TrustPoint, LeftOutLevel> {
  const n = data.length;
  const inverse = inverseOf(choleskyOf(datumCovariance(data, parameters), n), n);
  const weights = timesVector(
    inverse,
    data.map(({ error }) => error),
  );
  const levels = new Map<TrustPoint, LeftOutLevel>();
  for (const [experiment, members] of groupBy(points, ({ experiment }) => experiment)) {
    const own = data.flatMap(({ source }, i) => (source === experiment ? [i] : []));
    const block = choleskyOf(Float64Array.from(own.flatMap((i) => own.map((j) => inverse[i * n + j]))), own.length);
    const ownWeights = solvedBlock(
      block,
      Float64Array.from(own, (i) => weights[i]),
    );
    for (const point of members) {
      const level = reachableRegimes(point).map((regime) => {
        const at = errorPoint(point.section, point.condition, regime);
        const toData = data.map((datum) =>
          datum.source === experiment ? 0 : levelCovariance(at, datum.point, parameters),
        );
        const solved = timesVector(inverse, toData);
        const removed = Float64Array.from(own, (i) => solved[i]);
        const mean = dot(toData, weights) - dot(removed, ownWeights);
        const explained = dot(toData, solved) - dot(removed, solvedBlock(block, removed));
        const variance = levelCovariance(at, at, parameters) - explained;
        return [regime, { mean, variance: Math.max(0, variance) + parameters.singleDeviation ** 2 }] as const;
      });
      levels.set(point, new Map(level));
    }
  }
  return levels;
}

function inverseOf(factor: Readonly<Float64Array>, size: number): Float64Array {
  const inverse = new Float64Array(size * size);
  for (let j = 0; j < size; j++) {
    const column = new Float64Array(size);
    column[j] = 1;
    inverse.set(solvedBlock(factor, column), j * size);
  }
  return inverse;
}

function solvedBlock(factor: Readonly<Float64Array>, b: Readonly<Float64Array>): Float64Array {
  const x = b.slice();
  solveLowerInPlace(factor, x);
  solveUpperInPlace(factor, x);
  return x;
}

function timesVector(matrix: Readonly<Float64Array>, x: readonly number[]): Float64Array {
  const size = x.length;
  return Float64Array.from({ length: size }, (_, i) => dot(matrix.subarray(i * size, (i + 1) * size), x));
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

/** The drag itself, in ln Cd. */
export function dragMixture(point: TrustPoint, level: LeftOutLevel, parameters: ErrorParameters): NormalMixture {
  return mixture(point, level, parameters, () => 0);
}

/** What another tunnel would measure, in ln Cd. */
export function measurementMixture(point: TrustPoint, level: LeftOutLevel, parameters: ErrorParameters): NormalMixture {
  return mixture(point, level, parameters, (regime) => sourceDeviation(regime, parameters) ** 2 + point.scatter ** 2);
}

function mixture(
  point: TrustPoint,
  level: LeftOutLevel,
  parameters: ErrorParameters,
  added: (regime: Regime) => number,
): NormalMixture {
  const { mean, deviation } = parameters.crisisShift[point.kind];
  const here = Math.log(point.condition.reynolds);
  const means = new Float64Array(standardShifts.length);
  const deviations = new Float64Array(standardShifts.length);
  standardShifts.forEach((z, i) => {
    const shift = Math.min(furthestShift, Math.max(-furthestShift, mean + deviation * z));
    const { logDrag, regime } = dragAt(point.knots, here + shift);
    const own = level.get(regime)!;
    means[i] = logDrag + own.mean;
    deviations[i] = Math.sqrt(own.variance + added(regime));
  });
  return { weights: new Float64Array(means.length).fill(1 / means.length), means, deviations };
}

/** Values of one experiment and group weigh together as this power of their number, so that one long table does not rule. */
const tablePower = 0.5;

export function pointWeights(points: readonly TrustPoint[], power = tablePower): Map<TrustPoint, number> {
  const parts = groupBy(points, ({ experiment, group }) => `${experiment}|${group}`);
  return new Map(
    [...parts.values()].flatMap((part) => part.map((point) => [point, part.length ** (power - 1)] as const)),
  );
}

/** An observation is taken as no less likely than this density, so that one gross error does not rule the fit. */
const leastDensity = 0.01;

/** Mean of -ln density over the points, weighted, each with its experiment left out, and over the critical Reynolds numbers. */
export function leftOutLogScore(
  points: readonly TrustPoint[],
  levels: ReadonlyMap<TrustPoint, LeftOutLevel>,
  crises: readonly CrisisPoint[],
  parameters: ErrorParameters,
  power = tablePower,
): number {
  const weights = pointWeights(points, power);
  let sum = 0;
  let total = 0;
  for (const point of points) {
    const density = mixtureDensity(measurementMixture(point, levels.get(point)!, parameters), point.logMeasured);
    const weight = weights.get(point)!;
    sum -= weight * Math.log(density + leastDensity);
    total += weight;
  }
  const byExperiment = groupBy(crises, ({ experiment, kind }) => `${experiment}|${kind}`);
  for (const members of byExperiment.values()) {
    const weight = 1 / Math.sqrt(members.length);
    for (const { kind, shift, scatter } of members) {
      const { mean, deviation } = parameters.crisisShift[kind];
      const density = normalAt(shift, mean, Math.hypot(deviation, scatter));
      sum -= weight * Math.log(density + leastDensity);
      total += weight;
    }
  }
  return (sum + priorPenalty(parameters)) / total;
}

/** The prior: every number is within a factor of e^priorWidth of where the fit starts, two times in three. */
const priorWidth = 0.7;
/** Prior standard deviation of the mean shift of a crisis. */
const meanShiftWidth = 0.2;

function priorPenalty(parameters: ErrorParameters): number {
  const start = levelVector(startParameters);
  let sum = 0;
  levelVector(parameters).forEach((value, i) => {
    sum += ((value - start[i]) / priorWidth) ** 2 / 2;
  });
  for (const kind of crisisKinds) {
    const { mean, deviation } = parameters.crisisShift[kind];
    sum += (mean / meanShiftWidth) ** 2 / 2;
    sum += (Math.log(deviation / startParameters.crisisShift[kind].deviation) / priorWidth) ** 2 / 2;
  }
  return sum;
}

function normalAt(x: number, mean: number, deviation: number): number {
  return Math.exp(-(((x - mean) / deviation) ** 2) / 2) / (deviation * Math.sqrt(2 * Math.PI));
}
