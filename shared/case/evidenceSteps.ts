import type { ResultRow } from "../engine/section/resultRow";
import type { ComparisonResult } from "../jobs/evidence/comparisonResult";
import { comparisonStepCount, comparisonSteps } from "../jobs/evidence/comparisonSteps";
import type { PuckResult } from "../jobs/puck/puckcase/puckResult";
import type { TrialResult } from "../jobs/trial/trialResult";
import { trialStepCount, trialSteps } from "../jobs/trial/trialSteps";
import type { TunnelResult } from "../jobs/tunnel/tunnelResult";
import { tunnelStepCount, tunnelSteps } from "../jobs/tunnel/tunnelSteps";
import type { Case } from "./resolvedCase";

/** What the tests and measurements of a case yield; left out where the case has none. */
export interface EvidenceResults {
  readonly tunnel?: TunnelResult;
  readonly trial?: TrialResult;
  readonly comparison?: ComparisonResult;
}

/** One step done, counted from the first block of evidence. */
export interface EvidenceStep {
  readonly done: number;
  readonly label: string;
}

/** How many steps the blocks of evidence take. */
export function evidenceStepCount({ tunnel, trial, measurements }: Case): number {
  return (
    (tunnel === null ? 0 : tunnelStepCount(tunnel)) +
    (trial === null ? 0 : trialStepCount(trial)) +
    (measurements === null ? 0 : comparisonStepCount(measurements))
  );
}

/**
 * Works out the blocks of evidence of a case, one step per `next()`.
 * @param rows  results of the case's sections
 * @param pucks results of the case's pucks, whose drags a trial may take by name
 */
export function* evidenceSteps(
  theCase: Case,
  rows: readonly ResultRow[],
  pucks: readonly PuckResult[],
): Generator<EvidenceStep, EvidenceResults> {
  let results: EvidenceResults = {};
  let before = 0;
  if (theCase.tunnel !== null) {
    results = { ...results, tunnel: yield* counted(tunnelSteps(theCase.tunnel), before) };
    before += tunnelStepCount(theCase.tunnel);
  }
  if (theCase.trial !== null) {
    results = { ...results, trial: yield* counted(trialSteps(theCase.trial, puckDrags(pucks)), before) };
    before += trialStepCount(theCase.trial);
  }
  if (theCase.measurements !== null) {
    const steps = comparisonSteps(theCase.measurements, rows, theCase.shapes, results.tunnel?.reduction ?? null);
    results = { ...results, comparison: yield* counted(steps, before) };
  }
  return results;
}

/** What went wrong in the blocks of evidence, each with its place. */
export function evidenceProblems({ tunnel, comparison }: EvidenceResults): string[] {
  return [
    ...(tunnel?.problems ?? []).map((problem) => `tunnel: ${problem}`),
    ...(comparison?.sets ?? []).flatMap(({ name, problem }) => (problem === null ? [] : [`${name}: ${problem}`])),
  ];
}

/** Drag of each puck over the first baseline's, weighted by attitude and averaged over the conditions; 1 for itself. */
function puckDrags(pucks: readonly PuckResult[]): Map<string, number> {
  const drags = new Map<string, number>();
  pucks.forEach(({ name, comparisons, problem }, i) => {
    const drag = comparisons[0]?.overall.index.best ?? (i === 0 && problem === null ? 1 : null);
    if (drag !== null) drags.set(name, drag);
  });
  return drags;
}

function* counted<Value>(steps: Generator<EvidenceStep, Value>, before: number): Generator<EvidenceStep, Value> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    yield { done: before + step.value.done, label: step.value.label };
  }
}
