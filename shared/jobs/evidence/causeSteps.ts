import type { Cause, CauseKey } from "./causes";
import { compareSet, type SetComparison } from "./compareSet";
import { type CauseFit, fitCause, mostTrials } from "./fitCause";
import type { FlowSettings } from "./flowSettings";
import type { MeasuredBody } from "./measuredBody";
import type { MeasurementSet } from "./measurement";
import { predictionUncertainty } from "./normalisedError";

/** What one setting could do about a disagreement. Plain data. */
export interface CauseSuggestion {
  readonly key: CauseKey;
  readonly name: string;
  readonly quantity: string;
  /** The setting as the set states it, the value that fits expected, and the values that fit about as well. */
  readonly stated: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Part of the squared residuals (over their combined uncertainty) that the expected value takes away, 0 to 1. */
  readonly explainedShare: number;
  /** Points whose bands do not touch, with the stated and with the expected value. */
  readonly exceedingBefore: number;
  readonly exceedingAfter: number;
  /** Whether the expected value is met in practice, and by which measure. */
  readonly plausible: boolean;
  readonly plausibleFrom: number;
  readonly plausibleTo: number;
  readonly plausibleSource: string;
  /** All settings with the expected value in place, to show what it would look like. */
  readonly settings: FlowSettings;
}

/** One trial value done. */
export interface CauseStep {
  readonly done: number;
  readonly total: number;
  readonly label: string;
}

/** Most points that a search looks at; more are thinned evenly in the order of their Reynolds numbers. */
const mostPoints = 24;

/** Said with every list of causes. */
export const causeCaution =
  "Causes are suggestions, not findings: several can mimic each other, and an error of the engine or of the test can look like any of them. Measure the setting before you believe it.";

/**
 * Looks for the settings that would explain a disagreement, varying one at a time and solving again, one trial per
 * `next()`. Ranked by the share of the squared residuals that each explains; of two that explain about the same (within
 * 5 %), one with a plausible value comes first.
 * @param evenInside whether to look where no point has bands that do not touch too: for what would fit better
 * @returns an empty list where there is nothing to explain
 */
export function* causeSteps(
  measured: MeasuredBody,
  set: MeasurementSet,
  comparison: SetComparison,
  evenInside = false,
): Generator<CauseStep, CauseSuggestion[]> {
  if (comparison.comparedCount === 0 || (comparison.exceedingCount === 0 && !evenInside)) return [];
  const causes = measured.causes(set.conditions, comparison.settings);
  const total = causes.length * mostTrials;
  const suggestions: CauseSuggestion[] = [];
  const misfitOf = misfit(measured, set, comparison);
  const before = misfitOf.at(comparison.settings);
  for (const [i, cause] of causes.entries()) {
    const steps = fitCause(
      cause,
      (value) => misfitOf.at(cause.settings(comparison.settings, value)),
      before,
      misfitOf.pointCount,
    );
    for (let trial = 0; ; trial++) {
      const step = steps.next();
      if (step.done === true) {
        suggestions.push(suggestion(measured, set, comparison, cause, step.value, before));
        break;
      }
      yield { done: i * mostTrials + trial + 1, total, label: `trying ${cause.name}` };
    }
  }
  return ranked(suggestions);
}

/** The sum of squared residuals over their combined uncertainty, that of the prediction as it stands at the stated settings. */
function misfit(measured: MeasuredBody, set: MeasurementSet, { points }: SetComparison) {
  const used = thinned(
    points
      .flatMap(({ measured: point, predicted }) => (predicted === null ? [] : [{ point, predicted }]))
      .sort((a, b) => a.point.reynolds - b.point.reynolds),
  );
  const wanted = used.map(({ point }) => ({
    reynolds: point.reynolds,
    direction: point.direction ?? set.direction,
  }));
  const weights = used.map(({ point, predicted }) => {
    const own = point.standardUncertainty ?? 0;
    return 1 / (own ** 2 + predictionUncertainty(predicted, point.dragCoefficient) ** 2);
  });
  const at = (settings: FlowSettings) => {
    const predictions = measured.predict(settings, wanted, false);
    return used.reduce((sum, { point, predicted }, i) => {
      // Where a setting yields no state, nothing is gained there.
      const drag = predictions[i]?.dragCoefficient ?? predicted.dragCoefficient;
      return sum + weights[i] * (point.dragCoefficient - drag) ** 2;
    }, 0);
  };
  return { at, pointCount: used.length };
}

function thinned<Item>(items: readonly Item[]): Item[] {
  if (items.length <= mostPoints) return [...items];
  return Array.from({ length: mostPoints }, (_, i) => items[Math.round((i * (items.length - 1)) / (mostPoints - 1))]);
}

function suggestion(
  measured: MeasuredBody,
  set: MeasurementSet,
  comparison: SetComparison,
  cause: Cause,
  fit: CauseFit,
  before: number,
): CauseSuggestion {
  const { key, name, quantity, stated, plausible } = cause;
  // Never worse than leaving the setting where it is.
  const better = fit.misfit < before;
  const settings = better ? cause.settings(comparison.settings, fit.value) : comparison.settings;
  const value = better ? fit.value : stated;
  return {
    key,
    name,
    quantity,
    stated,
    value,
    low: Math.min(value, fit.low),
    high: Math.max(value, fit.high),
    explainedShare: better ? 1 - fit.misfit / before : 0,
    exceedingBefore: comparison.exceedingCount,
    exceedingAfter: better ? compareSet(measured, set, settings).exceedingCount : comparison.exceedingCount,
    plausible: value >= plausible.from && value <= plausible.to,
    plausibleFrom: plausible.from,
    plausibleTo: plausible.to,
    plausibleSource: plausible.source,
    settings,
  };
}

/** Shares closer than this count as the same. */
const sameShare = 0.05;

function ranked(suggestions: readonly CauseSuggestion[]): CauseSuggestion[] {
  const grade = ({ explainedShare }: CauseSuggestion) => Math.round(explainedShare / sameShare);
  return [...suggestions].sort(
    (a, b) => grade(b) - grade(a) || Number(b.plausible) - Number(a.plausible) || b.explainedShare - a.explainedShare,
  );
}
