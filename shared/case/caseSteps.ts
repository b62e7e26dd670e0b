import { generatedBy } from "../document/generatedBy";
import { contourExtent } from "../engine/section/contourExtent";
import { type PreparedShape, prepareShape } from "../engine/section/prepareShape";
import { type Branch, branchRow, type ResultRow, type RowSection } from "../engine/section/resultRow";
import { type SolvedStream, solveStreams, unsolvedStream } from "../engine/section/solveStreams";
import type { Stream, WallRoughness } from "../engine/section/stream";
import type { PuckResult } from "../jobs/puck/puckcase/puckResult";
import { puckSteps } from "../jobs/puck/puckcase/puckSteps";
import type { Result } from "../result";
import { type CaseResults, resultsVersion } from "./caseResults";
import { cautionsFor, patternCautions } from "./cautions";
import { evidenceProblems, evidenceStepCount, evidenceSteps } from "./evidenceSteps";
import type { Case, CaseShape } from "./resolvedCase";

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
  const walls = ({ sandGrainRoughness }: CaseShape) =>
    sandGrainRoughness === null ? theCase.walls : [{ sandGrainRoughness }];
  const sweeps = (shape: CaseShape) => walls(shape).length * theCase.turbulenceIntensities.length;
  const total =
    theCase.shapes.reduce((sum, shape) => sum + 1 + sweeps(shape), 0) +
    (theCase.puck?.pucks.length ?? 0) +
    evidenceStepCount(theCase);
  const results: ResultRow[] = [];
  let done = 0;
  for (const shape of theCase.shapes) {
    const prepared = prepare(theCase, shape);
    yield { done: ++done, total, label: `prepared ${shape.name}`, rows: [] };
    for (const wall of walls(shape)) {
      for (const turbulenceIntensity of theCase.turbulenceIntensities) {
        const streams = caseStreams(theCase, wall, turbulenceIntensity);
        const rows = sweepRows(theCase, shape, prepared, streams);
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

/** A section that is ready for its streams, or why it cannot be. */
function prepare(theCase: Case, shape: CaseShape): Result<PreparedShape> {
  const [turbulenceIntensity] = theCase.turbulenceIntensities;
  // The slowest stream: farthest from the drag crisis, where the branch itself may change with the last digit.
  return prepareShape(shape, caseStreams(theCase, theCase.walls[0], turbulenceIntensity)[0]);
}

/** The streams of a case at one roughness and turbulence, Reynolds number rising. */
function caseStreams({ speeds, trips }: Case, wall: WallRoughness, turbulenceIntensity: number): Stream[] {
  return speeds.map((speed) => ({ ...speed, ...wall, turbulenceIntensity, trips }));
}

function sweepRows(
  theCase: Case,
  shape: CaseShape,
  prepared: Result<PreparedShape>,
  streams: readonly Stream[],
): ResultRow[] {
  const { name, sweep } = shape;
  if (!prepared.ok) {
    const referenceWidth = contourExtent(shape.section, shape.incidence);
    const about: RowSection = { ...shape, referenceWidth, panelCount: null };
    return streams.flatMap((stream) => {
      const solved = unsolvedStream(stream, referenceWidth, prepared.problem);
      return branchesOf(theCase, solved).map((branch) => branchRow(about, solved, branch));
    });
  }
  const about: RowSection = { ...prepared.value, name, sweep };
  return solveStreams(prepared.value, streams).flatMap((solved) =>
    branchesOf(theCase, solved).map((branch) => branchRow(about, solved, branch)),
  );
}

function branchesOf({ branches }: Case, { outcome }: SolvedStream): Branch[] {
  switch (branches) {
    case "rising":
    case "falling":
      return [branches];
    case "both":
      return ["rising", "falling"];
    case "whereDifferent":
      return outcome.rising === outcome.falling ? ["rising"] : ["rising", "falling"];
  }
}
