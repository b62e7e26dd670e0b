import { generatedBy } from "../document/generatedBy";
import { contourExtent } from "../engine/section/contourExtent";
import { type PreparedShape, prepareShape } from "../engine/section/prepareShape";
import { type Branch, branchRow, type ResultRow, type RowSection } from "../engine/section/resultRow";
import { type SolvedStream, solveStreams, unsolvedStream } from "../engine/section/solveStreams";
import type { Stream, WallRoughness } from "../engine/section/stream";
import type { CaseSoFar } from "../jobs/jobBlock";
import type { Result } from "../result";
import { type CaseResults, resultsVersion } from "./caseResults";
import { cautionsFor, patternCautions } from "./cautions";
import { jobBlocks } from "./jobBlocks";
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
  const sweeps = (shape: CaseShape) => wallsOf(theCase, shape).length * theCase.turbulenceIntensities.length;
  const jobs = jobsOf(theCase);
  const total =
    theCase.shapes.reduce((sum, shape) => sum + 1 + sweeps(shape), 0) +
    jobs.reduce((sum, { block, job }) => sum + block.stepCount(job), 0);
  const results: ResultRow[] = [];
  let done = 0;
  for (const shape of theCase.shapes) {
    const prepared = prepare(theCase, shape);
    yield { done: ++done, total, label: `prepared ${shape.name}`, rows: [] };
    for (const wall of wallsOf(theCase, shape)) {
      for (const turbulenceIntensity of theCase.turbulenceIntensities) {
        const streams = caseStreams(theCase, wall, turbulenceIntensity);
        const rows = sweepRows(theCase, shape, prepared, streams);
        results.push(...rows);
        yield { done: ++done, total, label: `solved ${shape.name}`, rows };
      }
    }
  }
  const found: JobFound[] = [];
  const left = new Map<object, unknown>();
  for (const { block, job } of jobs) {
    const steps = block.steps(job, soFar(theCase, results, found, left));
    let step = steps.next();
    for (; step.done !== true; step = steps.next()) {
      yield { done: done + step.value.done, total, label: step.value.label, rows: [] };
    }
    done += block.stepCount(job);
    found.push({ block, outcome: step.value });
  }
  return caseResults(theCase, results, found);
}

function wallsOf({ walls }: Case, { sandGrainRoughness }: CaseShape): readonly WallRoughness[] {
  return sandGrainRoughness === null ? walls : [{ sandGrainRoughness }];
}

interface JobFound {
  readonly block: (typeof jobBlocks)[number];
  readonly outcome: unknown;
}

function jobsOf(theCase: Case) {
  const jobs: Readonly<Record<string, unknown>> = { ...theCase };
  return jobBlocks.flatMap((block) => {
    const job = jobs[block.key] ?? null;
    return job === null ? [] : [{ block, job }];
  });
}

function soFar(
  theCase: Case,
  rows: readonly ResultRow[],
  found: readonly JobFound[],
  left: Map<object, unknown>,
): CaseSoFar {
  const { shapes } = theCase;
  return {
    rows,
    shapes,
    sweeps: () =>
      shapes.flatMap((shape) =>
        wallsOf(theCase, shape).flatMap((wall) =>
          theCase.turbulenceIntensities.map((turbulenceIntensity) => ({
            shape,
            streams: caseStreams(theCase, wall, turbulenceIntensity),
          })),
        ),
      ),
    drags: new Map(found.flatMap(({ block, outcome }) => [...(block.drags?.(outcome) ?? [])])),
    leave: (what, value) => {
      left.set(what, value);
    },
    leftOf: <Value>(what: object) => left.get(what) as Value | undefined,
    outcomeOf: <Outcome>({ resultKey }: { readonly resultKey: string }) =>
      found.find(({ block }) => block.resultKey === resultKey)?.outcome as Outcome | undefined,
  };
}

function caseResults(theCase: Case, results: readonly ResultRow[], found: readonly JobFound[]): CaseResults {
  const cautions = [
    ...cautionsFor(theCase.fluid, results),
    ...patternCautions(theCase.pattern),
    ...found.flatMap(({ block, outcome }) => block.cautions?.(outcome) ?? []),
  ];
  const problems = [...results.flatMap(problemOf), ...found.flatMap(({ block, outcome }) => block.problems(outcome))];
  return {
    wakewrightResults: resultsVersion,
    title: theCase.title,
    note: theCase.note,
    generatedBy,
    fluid: theCase.fluid,
    cautions: [...new Set(cautions)],
    results,
    ...Object.fromEntries(found.map(({ block, outcome }) => [block.resultKey, outcome])),
    problems: [...new Set(problems)],
  };
}

/** What is wrong with a row, with the section's name in it. */
function problemOf(row: ResultRow): string[] {
  if (row.problem === null) return [];
  return [row.problem.startsWith(row.section) ? row.problem : `${row.section}: ${row.problem}`];
}

/**
 * Runs one job of a case by itself, one step per `next()`: without the rows of the case, and of
 * the jobs before it only with those that it says it comes after.
 * @param block of the job, which the case must have
 */
export function* oneJobSteps<Outcome>(
  theCase: Case,
  block: { readonly key: string; readonly resultKey: string; table(outcome: Outcome): string },
): Generator<Omit<CaseStep, "rows">, Outcome> {
  const found = jobsOf(theCase).find((each) => each.block.key === block.key);
  if (found === undefined) throw new RangeError(`the case has no "${block.key}".`);
  const needed = jobsOf(theCase).filter(({ block: { key } }) => found.block.after?.includes(key));
  const total = [...needed, found].reduce((sum, each) => sum + each.block.stepCount(each.job), 0);
  const before: JobFound[] = [];
  const left = new Map<object, unknown>();
  let done = 0;
  for (const each of [...needed, found]) {
    const steps = each.block.steps(each.job, soFar(theCase, [], before, left));
    let step = steps.next();
    for (; step.done !== true; step = steps.next()) yield { ...step.value, done: done + step.value.done, total };
    if (each === found) return step.value as Outcome;
    done += each.block.stepCount(each.job);
    before.push({ block: each.block, outcome: step.value });
  }
  throw new RangeError(`the job "${block.key}" did not run.`);
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
