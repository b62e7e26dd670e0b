import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { prepareShape } from "../../shared/engine/section/prepareShape";
import { type CauseSuggestion, causeSteps } from "../../shared/jobs/evidence/causeSteps";
import { compareSet, type SetComparison } from "../../shared/jobs/evidence/compareSet";
import { type FlowSettings, statedSettings } from "../../shared/jobs/evidence/flowSettings";
import { type MeasuredBody, type MeasuredSection, measuredSection } from "../../shared/jobs/evidence/measuredBody";
import {
  bareMeasuredPoint,
  type MeasuredConditions,
  type MeasurementSet,
  type SpeedDirection,
} from "../../shared/jobs/evidence/measurement";

/** An endless polished body in a quiet, wide stream. */
export const quietConditions: MeasuredConditions = {
  turbulenceIntensity: 0.001,
  sandGrainRoughnessRatio: 1e-5,
  blockageRatio: null,
  blockageCorrected: false,
  lengthToWidth: null,
  ends: "endless",
};

export const quietSettings = statedSettings(quietConditions);

export function prepared(spec: SectionSpec, panelCount: number): MeasuredSection {
  const shape = prepareShape({ section: spec, panelCount });
  if (!shape.ok) throw new Error(shape.problem.message);
  return measuredSection(shape.value);
}

export function setOf(
  points: MeasurementSet["points"],
  conditions: MeasuredConditions = quietConditions,
  direction: SpeedDirection | null = "rising",
): MeasurementSet {
  return { name: "a test", kind: "tunnelTest", source: "made for a test", direction, conditions, points };
}

/** A set that the engine makes itself under other settings than those it states. */
export function syntheticSet(
  body: MeasuredBody,
  truth: FlowSettings,
  reynoldsNumbers: readonly number[],
  relativeUncertainty = 0.02,
): MeasurementSet {
  const wanted = reynoldsNumbers.map((reynolds) => ({ reynolds, direction: "rising" as const }));
  const predictions = body.predict(truth, wanted, false);
  return setOf(
    predictions.map((point, i) => {
      if (point === null) throw new Error(`no state at Re ${reynoldsNumbers[i]}`);
      return bareMeasuredPoint(reynoldsNumbers[i], point.dragCoefficient, relativeUncertainty * point.dragCoefficient);
    }),
  );
}

export function causesOf(
  body: MeasuredBody,
  set: MeasurementSet,
  comparison: SetComparison = compareSet(body, set),
  evenInside = false,
): CauseSuggestion[] {
  const steps = causeSteps(body, set, comparison, evenInside);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
