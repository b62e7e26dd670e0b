import { type FlowSettings, statedSettings } from "./flowSettings";
import type { MeasuredBody } from "./measuredBody";
import type { MeasuredPoint, MeasurementSet } from "./measurement";
import { exceedsBothBands, normalisedError } from "./normalisedError";
import type { PredictedPoint } from "./predictAt";
import { type RegimeBias, regimeBiases } from "./regimeBias";

/** Measured against predicted at one point. */
export interface ComparedPoint {
  readonly measured: MeasuredPoint;
  /** null where the engine finds no state. */
  readonly predicted: PredictedPoint | null;
  /** null without a prediction. */
  readonly residual: PointResidual | null;
}

export interface PointResidual {
  /** Measured - predicted drag coefficient. */
  readonly absolute: number;
  /** The same over the predicted one. */
  readonly relative: number;
  /** E_n; beyond -1 to 1 the two disagree. */
  readonly normalisedError: number;
  /** True where the bands of both do not touch. */
  readonly exceedsBothBands: boolean;
  /** Measured - predicted; null where either is missing. */
  readonly strouhal: number | null;
  readonly basePressureCoefficient: number | null;
  readonly separationAngleDegrees: number | null;
}

/** A set held against the prediction under one choice of settings. */
export interface SetComparison {
  readonly settings: FlowSettings;
  readonly points: readonly ComparedPoint[];
  readonly biases: readonly RegimeBias[];
  /** Points that the prediction and a residual exist of. */
  readonly comparedCount: number;
  /** Of these, how many have bands that do not touch. */
  readonly exceedingCount: number;
  /** Of these, how many have a normalised error beyond -1 to 1. */
  readonly beyondOneCount: number;
}

/**
 * Holds a measurement set against the engine.
 * @param settings those that the set states by default; others answer "what if"
 */
export function compareSet(
  { predict }: Pick<MeasuredBody, "predict">,
  set: MeasurementSet,
  settings: FlowSettings = statedSettings(set.conditions),
): SetComparison {
  const wanted = set.points.map((point) => ({
    reynolds: point.reynolds,
    direction: point.direction ?? set.direction,
  }));
  const predictions = predict(settings, wanted, true);
  const points = set.points.map((measured, i) => comparePoint(measured, predictions[i]));
  const found = points.flatMap(({ residual, predicted }) =>
    residual === null || predicted === null ? [] : [{ residual, regime: predicted.regime }],
  );
  return {
    settings,
    points,
    biases: regimeBiases(found.map(({ residual, regime }) => ({ regime, relative: residual.relative }))),
    comparedCount: found.length,
    exceedingCount: found.filter(({ residual }) => residual.exceedsBothBands).length,
    beyondOneCount: found.filter(({ residual }) => Math.abs(residual.normalisedError) > 1).length,
  };
}

function comparePoint(measured: MeasuredPoint, predicted: PredictedPoint | null): ComparedPoint {
  if (predicted === null) return { measured, predicted, residual: null };
  const standardUncertainty = measured.standardUncertainty ?? 0;
  const absolute = measured.dragCoefficient - predicted.dragCoefficient;
  const difference = (value: number | null, other: number | null) =>
    value === null || other === null ? null : value - other;
  return {
    measured,
    predicted,
    residual: {
      absolute,
      relative: absolute / predicted.dragCoefficient,
      normalisedError: normalisedError(measured.dragCoefficient, standardUncertainty, predicted),
      exceedsBothBands: exceedsBothBands(measured.dragCoefficient, standardUncertainty, predicted),
      strouhal: difference(measured.strouhal, predicted.strouhal),
      basePressureCoefficient: difference(measured.basePressureCoefficient, predicted.basePressureCoefficient),
      separationAngleDegrees: difference(measured.separationAngleDegrees, predicted.separationAngleDegrees),
    },
  };
}
