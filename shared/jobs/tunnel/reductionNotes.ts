import type { BlockageMethod, BlockageRange } from "./blockage";
import { correlationNotes } from "./correlationNotes";
import type { PointSetting } from "./pointBudget";
import type { ReducedPoint, ReductionSetting } from "./reducedTest";
import type { SortedRuns } from "./runPoints";

/** What was taken out and what is missing, in sentences. */
export function reductionNotes(
  { model, tare, zeroCount, driftAlong }: SortedRuns,
  setting: ReductionSetting,
  { pooled }: PointSetting,
  ranges: Readonly<Record<BlockageMethod, BlockageRange>>,
  points: readonly ReducedPoint[],
): string[] {
  const { stated, balance, correction, fluidSpec } = setting;
  const notes: string[] = [];
  if (zeroCount === 0) notes.push("No zero readings: the balance's zero is taken as 0 N all through.");
  else
    notes.push(
      `Zero drift taken out along ${driftAlong === "time" ? "time" : "the order of the rows"}, ${zeroCount} zero readings.`,
    );
  if (tare.length === 0) notes.push("No runs of the support alone: its drag is still in the figures.");
  const singles = model.filter(({ readings }) => readings.length === 1).length;
  if (singles > 0 && pooled === null && balance.noise === null) {
    notes.push(
      `${singles} points have one reading and no noise of the balance is stated: their scatter is missing from the uncertainty.`,
    );
  }
  if (ranges[correction].isInRange !== true)
    notes.push(`The reported correction is outside its range: ${ranges[correction].reason}.`);
  const isPressureRead = model.every(({ readings }) =>
    readings.every(({ reading }) => Boolean(reading.dynamicPressure)),
  );
  const expected = [
    "balanceCalibrationPercent",
    isPressureRead ? "dynamicPressurePercent" : "speedPercent",
    "streamCalibrationPercent",
    "temperatureCelsius",
    "referenceAreaPercent",
    "referenceLengthPercent",
    ...(tare.length > 0 ? ["supportInterferencePercent" as const] : []),
    ...(correction === "none" ? [] : ["blockagePercent" as const]),
  ] as const;
  const missing = expected.filter((key) => stated[key] === undefined);
  if (missing.length > 0) notes.push(`No uncertainty was stated for ${missing.join(", ")}: taken as exact.`);
  if (
    fluidSpec.kind === "dryAir" &&
    !isPressureRead &&
    model.some(({ readings }) => readings.some(({ reading }) => reading.humidity === null))
  ) {
    notes.push(
      "Without humidity dry air is taken: saturated air at 20 °C is 0.9 % lighter, and the drag coefficient then that much higher.",
    );
  }
  const endless = points.filter(({ monteCarlo }) => monteCarlo?.standardUncertainty === null).length;
  if (endless > 0) {
    notes.push(
      `By propagated distributions ${endless} of ${points.length} points have no standard uncertainty: a scatter or a statement has 2 degrees of freedom or fewer, and Student's t then has no variance. Their intervals stand.`,
    );
  }
  const inputs = points.flatMap(({ firstOrder }) => firstOrder.parts.map(({ key }) => key));
  const known = points.length === 0 ? null : new Set(inputs);
  for (const { index, message } of correlationNotes(setting.correlations, stated, setting.samples, known)) {
    notes.push(index === null ? `Correlations: ${message}.` : `Correlation ${index + 1}: ${message}.`);
  }
  return notes;
}
