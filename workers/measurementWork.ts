import type { MeasuredCorrection } from "../shared/jobs/evidence/carriedCorrection";
import { type CauseStep, type CauseSuggestion, causeSteps } from "../shared/jobs/evidence/causeSteps";
import { compareSet } from "../shared/jobs/evidence/compareSet";
import type { ComparisonRow, SetResult } from "../shared/jobs/evidence/comparisonResult";
import { prepareMeasured } from "../shared/jobs/evidence/comparisonSteps";
import type { FlowSettings } from "../shared/jobs/evidence/flowSettings";
import type { MeasuredBody } from "../shared/jobs/evidence/measuredBody";
import { measuredCorrection } from "../shared/jobs/evidence/measuredCorrection";
import type { MeasurementSetDocument } from "../shared/jobs/evidence/measurementBlockDocument";
import type { CaseMeasurement } from "../shared/jobs/evidence/measurementCase";
import { resolveMeasurements } from "../shared/jobs/evidence/resolveMeasurements";
import { comparedSetResult, comparisonRow, failedSetResult } from "../shared/jobs/evidence/setResult";
import { type Problem, type Result, success } from "../shared/result";

/** A set against the prediction, without its causes, and what it could be carried with. */
export interface MeasuredAnswer {
  readonly result: SetResult;
  /** null where the set gives none; the result says why. */
  readonly correction: MeasuredCorrection | null;
}

export type MeasuredOutcome =
  | { readonly ok: true; readonly value: MeasuredAnswer }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What the evidence worker does with measurements. What was measured must stand in the set itself. */
export interface MeasurementWork {
  compareSet(document: MeasurementSetDocument): Promise<MeasuredOutcome>;
  /** Settings that would explain a disagreement, or fit better where there is none, ranked. */
  findCauses(
    document: MeasurementSetDocument,
    onStep: (step: CauseStep) => Promise<void>,
  ): Promise<Result<readonly CauseSuggestion[]>>;
  /** The set against a prediction under other settings. */
  compareUnder(document: MeasurementSetDocument, settings: FlowSettings): Promise<Result<readonly ComparisonRow[]>>;
}

/** Steps between messages to the page: a message for every trial would only keep it busy. */
const stepsPerMessage = 5;

/** The work with a memory of the last design that was solved: its causes are asked for next. */
export function measurementWork(): MeasurementWork {
  let lastKey = "";
  let last: Result<MeasuredBody> | null = null;
  const prepare = (measurement: CaseMeasurement, document: MeasurementSetDocument) => {
    const { section, puck, attitude, incidenceDegrees, panelCount } = document;
    const key = JSON.stringify([section, puck, attitude, incidenceDegrees, panelCount, measurement.set]);
    if (last === null || key !== lastKey) {
      last = prepareMeasured(measurement);
      lastKey = key;
    }
    return last;
  };
  const open = (document: MeasurementSetDocument): Result<{ measurement: CaseMeasurement; body: MeasuredBody }> => {
    const resolved = resolve(document);
    if (!resolved.ok) return { ok: false, problem: resolved.problems[0] };
    const body = prepare(resolved.value, document);
    return body.ok ? success({ measurement: resolved.value, body: body.value }) : body;
  };
  return {
    async compareSet(document) {
      const resolved = resolve(document);
      if (!resolved.ok) return resolved;
      const body = prepare(resolved.value, document);
      if (!body.ok) {
        return {
          ok: true,
          value: { result: failedSetResult(resolved.value, body.problem.message), correction: null },
        };
      }
      const { width, description } = body.value;
      const comparison = compareSet(body.value, resolved.value.set);
      const correction = measuredCorrection(resolved.value.set, comparison, description);
      const carried = correction.ok ? correction.value : { factors: [], leftOut: [correction.problem.message] };
      const result = comparedSetResult(resolved.value, width, comparison, [], carried);
      return { ok: true, value: { result, correction: correction.ok ? correction.value : null } };
    },
    async findCauses(document, onStep) {
      const opened = open(document);
      if (!opened.ok) return opened;
      const { measurement, body } = opened.value;
      const search = causeSteps(body, measurement.set, compareSet(body, measurement.set), true);
      for (let step = 0; ; step++) {
        const trial = search.next();
        if (trial.done === true) return success(trial.value);
        if (step % stepsPerMessage === 0) await onStep(trial.value);
      }
    },
    async compareUnder(document, settings) {
      const opened = open(document);
      if (!opened.ok) return opened;
      const { measurement, body } = opened.value;
      const { points } = compareSet(body, measurement.set, settings);
      return success(points.map((point) => comparisonRow(measurement.set, point)));
    },
  };
}

function resolve(document: MeasurementSetDocument) {
  const resolved = resolveMeasurements({ sets: [document] }, { fluid: null, sections: [], hasTunnelRuns: false });
  return resolved.ok ? { ok: true as const, value: resolved.value.measurements[0] } : resolved;
}
