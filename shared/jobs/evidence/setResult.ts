import { percentOf } from "../../numerics/degreesAndPercent";
import type { RegimeFactor } from "./carriedCorrection";
import type { CauseSuggestion } from "./causeSteps";
import type { ComparedPoint, SetComparison } from "./compareSet";
import type { ComparedSettings, ComparisonRow, SetResult } from "./comparisonResult";
import { assumptions, type FlowSettings, statedSettings } from "./flowSettings";
import type { MeasurementSet } from "./measurement";
import type { CaseMeasurement } from "./measurementCase";
import { coverage } from "./normalisedError";

/** The result of a set that was compared. */
export function comparedSetResult(
  measurement: CaseMeasurement,
  referenceWidth: number,
  comparison: SetComparison,
  causes: readonly CauseSuggestion[],
  correction: { readonly factors: readonly RegimeFactor[]; readonly leftOut: readonly string[] },
): SetResult {
  const { comparedCount, exceedingCount, beyondOneCount, biases } = comparison;
  return {
    ...common(measurement, comparison.settings),
    referenceWidth,
    rows: comparison.points.map((point) => comparisonRow(measurement.set, point)),
    biases,
    comparedCount,
    exceedingCount,
    beyondOneCount,
    verdict: verdict(comparison),
    causes,
    factors: correction.factors,
    factorsLeftOut: correction.leftOut,
    problem: null,
  };
}

/** The result of a set whose section could not be solved. */
export function failedSetResult(measurement: CaseMeasurement, reason: string): SetResult {
  const { set } = measurement;
  return {
    ...common(measurement, statedSettings(set.conditions)),
    referenceWidth: null,
    rows: set.points.map((measured) => comparisonRow(set, { measured, predicted: null, residual: null })),
    biases: [],
    comparedCount: 0,
    exceedingCount: 0,
    beyondOneCount: 0,
    verdict: "Nothing could be compared.",
    causes: [],
    factors: [],
    factorsLeftOut: [],
    problem: reason,
  };
}

function common(measurement: CaseMeasurement, settings: FlowSettings) {
  const { set, note, designName, design, referenceText, shownOn, skipped } = measurement;
  return {
    name: set.name,
    kind: set.kind,
    source: set.source,
    note,
    section: designName,
    design: design.kind,
    referenceText,
    shownOn,
    settings: comparedSettings(settings),
    remarks: [...assumptions(set.conditions), ...designRemarks(design), ...uncertaintyRemarks(set), ...skipped],
  };
}

export function comparedSettings(settings: FlowSettings): ComparedSettings {
  return {
    turbulencePercent: percentOf(settings.turbulenceIntensity),
    sandGrainRoughnessRatio: settings.sandGrainRoughnessRatio,
    lengthToWidth: settings.lengthToWidth,
    blockageRatio: settings.blockageRatio,
  };
}

function designRemarks({ kind }: CaseMeasurement["design"]): string[] {
  if (kind === "section") return [];
  return [
    "A whole puck, predicted for a rising speed. Its offset is shown and carried to no other design.",
    "Its band holds what the methods and sources behind it allow, no share of measured pucks; En takes it as if it held nine in ten.",
  ];
}

function uncertaintyRemarks({ points, direction }: MeasurementSet): string[] {
  const bare = points.filter(({ standardUncertainty }) => standardUncertainty === null).length;
  const remarks: string[] = [];
  if (bare > 0) {
    const which = bare === points.length ? "The points have" : `${bare} of ${points.length} points have`;
    remarks.push(`${which} no stated uncertainty; only the prediction's counts there.`);
  }
  if (direction === null && points.some((point) => point.direction === null)) {
    remarks.push("The direction of speed is not stated; where two states exist the band holds both.");
  }
  return remarks;
}

export function comparisonRow(set: MeasurementSet, { measured, predicted, residual }: ComparedPoint): ComparisonRow {
  const { standardUncertainty } = measured;
  return {
    set: set.name,
    reynolds: measured.reynolds,
    direction: measured.direction ?? set.direction,
    measuredDragCoefficient: measured.dragCoefficient,
    measuredExpandedUncertainty: standardUncertainty === null ? null : coverage * standardUncertainty,
    predictedDragCoefficient: predicted?.dragCoefficient ?? null,
    predictedLow: predicted?.low ?? null,
    predictedHigh: predicted?.high ?? null,
    regime: predicted?.regime ?? null,
    residual: residual?.absolute ?? null,
    residualPercent: residual === null ? null : 100 * residual.relative,
    normalisedError: residual?.normalisedError ?? null,
    exceedsBothBands: residual?.exceedsBothBands ?? null,
    measuredStrouhal: measured.strouhal,
    predictedStrouhal: predicted?.strouhal ?? null,
    measuredBasePressureCoefficient: measured.basePressureCoefficient,
    predictedBasePressureCoefficient: predicted?.basePressureCoefficient ?? null,
    measuredSeparationAngleDegrees: measured.separationAngleDegrees,
    predictedSeparationAngleDegrees: predicted?.separationAngleDegrees ?? null,
    applicability: predicted?.applicability ?? null,
    applicabilityReason: predicted?.applicabilityReason ?? null,
  };
}

/** The outcome of a comparison in one sentence. */
export function verdict({ comparedCount, exceedingCount, beyondOneCount, biases }: SetComparison): string {
  if (comparedCount === 0) return "Nothing could be compared.";
  const mean = meanSentence(biases);
  if (exceedingCount === 0) {
    const beyond = beyondOneCount === 0 ? "" : `, though |En| is above 1 at ${beyondOneCount}`;
    return `No disagreement beyond both bands at any of ${count(comparedCount)}${beyond}.${mean}`;
  }
  return `Disagreement beyond both bands at ${exceedingCount} of ${count(comparedCount)}, |En| above 1 at ${beyondOneCount}.${mean}`;
}

/** Where points lie to both sides, a mean of them hides what they show: then every regime is told by itself. */
function meanSentence(biases: SetComparison["biases"]): string {
  const all = biases.find(({ regime }) => regime === "all");
  if (all === undefined) return "";
  if (all.scatter === null || all.scatter <= Math.abs(all.bias)) {
    return ` On the mean the measurement lies ${offset(all.bias)} the prediction.`;
  }
  const regimes = biases.filter(({ regime }) => regime !== "all");
  const each = regimes.map(({ regime, bias }) => `${offset(bias)} it in the ${regime} regime`).join(", ");
  return ` The points lie to both sides of the prediction, ${(100 * all.scatter).toFixed(1)} % apart about their mean${each === "" ? "" : `: ${each}`}.`;
}

function count(points: number): string {
  return points === 1 ? "1 point" : `${points} points`;
}

function offset(bias: number): string {
  const percent = Math.abs(100 * bias);
  return percent < 0.05 ? "on" : `${percent.toFixed(1)} % ${bias > 0 ? "above" : "below"}`;
}
