import { generatedBy } from "../document/generatedBy";
import type { FlowCondition } from "../engine/condition";
import { contourExtent } from "../engine/section/contourExtent";
import { type PreparedShape, prepareSettledShape, prepareShape } from "../engine/section/prepareShape";
import { type Branch, branchRow, type ResultRow, type RowCondition } from "../engine/section/resultRow";
import type { ConditionOutcome } from "../engine/solution";
import { traceDragCurve } from "../engine/solve/dragCurve";
import { curveBands } from "../engine/trust/curveBands";
import type { PuckResult } from "../jobs/puck/puckcase/puckResult";
import { puckSteps } from "../jobs/puck/puckcase/puckSteps";
import type { Problem, Result } from "../result";
import { type CaseResults, resultsVersion } from "./caseResults";
import { cautionsFor, patternCautions } from "./cautions";
import { evidenceProblems, evidenceStepCount, evidenceSteps } from "./evidenceSteps";
import type { Case, CaseShape } from "./resolvedCase";
import { streamConditions } from "./streamConditions";

/** One step of a case done: a shape prepared, or one section swept over the stream at one roughness and turbulence. */
export interface CaseStep {
  readonly done: number;
  readonly total: number;
  /** What was done. */
  readonly label: string;
  /** Results that this step added. */
  readonly rows: readonly ResultRow[];
}

/**
 * Runs a case one step per `next()`, so that the caller can show progress, let other work in, or stop between steps; the
 * generator's return value is everything that the case yields. Rows come by section, roughness, turbulence and rising
 * Reynolds number.
 */
export function* caseSteps(theCase: Case): Generator<CaseStep, CaseResults> {
  const roughnesses = (shape: CaseShape) =>
    shape.sandGrainRoughness === null ? theCase.roughness.values : [shape.sandGrainRoughness];
  const sweeps = (shape: CaseShape) => roughnesses(shape).length * theCase.turbulencePercents.length;
  const total =
    theCase.shapes.reduce((sum, shape) => sum + 1 + sweeps(shape), 0) +
    (theCase.puck?.pucks.length ?? 0) +
    evidenceStepCount(theCase);
  const results: ResultRow[] = [];
  let done = 0;
  for (const shape of theCase.shapes) {
    const prepared = prepare(theCase, shape);
    yield { done: ++done, total, label: `prepared ${shape.name}`, rows: [] };
    for (const roughness of roughnesses(shape)) {
      for (const turbulencePercent of theCase.turbulencePercents) {
        const rows = sweepRows(theCase, shape, prepared, roughness, turbulencePercent);
        results.push(...rows);
        yield { done: ++done, total, label: `solved ${shape.name}`, rows };
      }
    }
  }
  const pucks: PuckResult[] = [];
  if (theCase.puck !== null) {
    for (const { result } of puckSteps(theCase.puck)) {
      pucks.push(result);
      yield { done: ++done, total, label: `judged ${result.name}`, rows: [] };
    }
  }
  const evidence = evidenceSteps(theCase, results, pucks);
  let found = evidence.next();
  for (; found.done !== true; found = evidence.next()) {
    yield { done: done + found.value.done, total, label: found.value.label, rows: [] };
  }
  return {
    wakewrightResults: resultsVersion,
    title: theCase.title,
    note: theCase.note,
    generatedBy,
    fluid: theCase.fluid,
    cautions: [
      ...new Set([
        ...cautionsFor(theCase.fluid, results),
        ...patternCautions(theCase.pattern),
        ...pucks.flatMap(({ cautions }) => cautions),
      ]),
    ],
    results,
    ...(theCase.puck === null ? {} : { pucks }),
    ...found.value,
    problems: [
      ...new Set([...results.flatMap(problemOf), ...pucks.flatMap(puckProblem), ...evidenceProblems(found.value)]),
    ],
  };
}

/** What is wrong with a row, with the section's name in it. */
function problemOf(row: ResultRow): string[] {
  if (row.problem === null) return [];
  return [row.problem.startsWith(row.section) ? row.problem : `${row.section}: ${row.problem}`];
}

function puckProblem({ name, problem }: PuckResult): string[] {
  return problem === null ? [] : [`${name}: ${problem}`];
}

/** Runs a whole case at once. */
export function runCase(theCase: Case, onProgress: (step: CaseStep) => void = () => {}): CaseResults {
  const steps = caseSteps(theCase);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    onProgress(step.value);
  }
}

function radians(shape: CaseShape): number {
  return (shape.incidenceDegrees * Math.PI) / 180;
}

function prepare(theCase: Case, shape: CaseShape): Result<PreparedShape> {
  if (theCase.panelCount !== "auto") {
    return prepareShape(shape.contour, radians(shape), theCase.panelCount, shape.floorGapMetres);
  }
  const [roughness] = theCase.roughness.values;
  const [turbulencePercent] = theCase.turbulencePercents;
  // The slowest stream: farthest from the drag crisis, where the branch itself may change with the last digit.
  return prepareSettledShape(
    shape.contour,
    radians(shape),
    (width) => streamConditions(theCase, width, roughness, turbulencePercent)[0].flow,
    shape.floorGapMetres,
  );
}

function sweepRows(
  theCase: Case,
  shape: CaseShape,
  prepared: Result<PreparedShape>,
  roughness: number,
  turbulencePercent: number,
): ResultRow[] {
  const width = prepared.ok ? prepared.value.referenceWidth : contourExtent(shape.contour, radians(shape));
  const conditions = streamConditions(theCase, width, roughness, turbulencePercent);
  const flows = conditions.map(({ flow }) => flow);
  const outcomes = prepared.ok
    ? traceDragCurve(prepared.value.section, flows)
    : flows.map(() => nothing(prepared.problem));
  const bands = prepared.ok ? curveBands(prepared.value.section, flows, outcomes) : flows.map(() => []);
  return conditions.flatMap(({ flow, speed }, i) => {
    const about = rowCondition(theCase, shape, prepared, width, flow, speed, turbulencePercent);
    return branchesOf(theCase, outcomes[i]).map((branch) => branchRow(about, outcomes[i], branch, bands[i]));
  });
}

function nothing(reason: Problem): ConditionOutcome {
  return { states: [], rising: null, falling: null, problem: reason };
}

function branchesOf(theCase: Case, outcome: ConditionOutcome): Branch[] {
  switch (theCase.branches) {
    case "rising":
    case "falling":
      return [theCase.branches];
    case "both":
      return ["rising", "falling"];
    case "whereDifferent":
      return outcome.rising === outcome.falling ? ["rising"] : ["rising", "falling"];
  }
}

function rowCondition(
  theCase: Case,
  shape: CaseShape,
  prepared: Result<PreparedShape>,
  width: number,
  flow: FlowCondition,
  speed: number | null,
  turbulencePercent: number,
): RowCondition {
  return {
    section: shape.name,
    sweep: shape.sweep,
    incidenceDegrees: shape.incidenceDegrees,
    floorGapMetres: shape.floorGapMetres,
    reynolds: flow.reynolds,
    speed,
    density: theCase.fluid?.density ?? null,
    sandGrainRoughnessRatio: flow.sandGrainRoughnessRatio,
    turbulencePercent,
    referenceWidth: width,
    panelCount: prepared.ok ? prepared.value.panelCount : null,
  };
}
