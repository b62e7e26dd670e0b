import { documentProblems } from "../document/documentProblems";
import { expandSweep, type Sweep } from "../document/expandSweep";
import { parseDocument } from "../document/parseDocument";
import { patternOf } from "../document/patternDocument";
import type { FluidProperties } from "../engine/fluid/fluidSpec";
import { resolveFluid } from "../engine/fluid/resolveFluid";
import { equivalentRoughness } from "../engine/pattern/equivalentRoughness";
import type { StreamSpeed, WallRoughness } from "../engine/section/stream";
import type { CaseSurroundings } from "../jobs/jobBlock";
import { fractionOf } from "../numerics/degreesAndPercent";
import type { Problem } from "../result";
import { type CaseDocument, caseDocument } from "./caseDocument";
import { caseShapes } from "./caseShapes";
import { crossChecks } from "./crossChecks";
import { tripOf } from "./flowDocument";
import { blockIn, type CaseJobs, jobBlocks } from "./jobBlocks";
import type { Case, PatternWall } from "./resolvedCase";

/**
 * A case, or everything that is wrong with its file. `problem` sums up in one line (file, first key, allowed range, how
 * many more); `problems` has each one, in the file's order.
 */
export type CaseReading =
  | { readonly ok: true; readonly value: Case }
  | { readonly ok: false; readonly problem: Problem; readonly problems: readonly Problem[] };

/**
 * Reads a case file.
 * @param text     the file's text
 * @param fileName its name, for messages
 */
export function readCase(text: string, fileName: string): CaseReading {
  const parsed = parseDocument(text, caseDocument);
  return parsed.ok ? checkCase(parsed.value, fileName) : refused(fileName, parsed.problems);
}

/** Reads a case that has been parsed already. */
export function readCaseDocument(document: unknown, fileName: string): CaseReading {
  const parsed = caseDocument.safeParse(document);
  return parsed.success
    ? checkCase(parsed.data, fileName)
    : refused(fileName, documentProblems(document, parsed.error));
}

/** The case of a document that fits the schema, or what contradicts itself in it. */
export function checkCase(document: CaseDocument, fileName: string): CaseReading {
  const resolved = resolve(document);
  return resolved.problems.length > 0 ? refused(fileName, resolved.problems) : { ok: true, value: resolved.value };
}

function resolve(document: CaseDocument): { value: Case; problems: readonly Problem[] } {
  const { shapes, problems: shapeProblems } = caseShapes(document);
  const problems = [...shapeProblems];
  const fluid = document.fluid === undefined ? null : resolveFluid(document.fluid);
  if (fluid?.ok === false) problems.push({ ...fluid.problem, field: `fluid.${fluid.problem.field}` });
  const properties = fluid?.ok === true ? fluid.value : null;
  const pattern = patternWall(document);
  const flow = {
    fluid: properties,
    speeds: streamSpeeds(document, properties),
    walls: wallRoughnesses(document, pattern),
    turbulenceIntensities: expandSweep(document.turbulencePercents ?? []).map(fractionOf),
  };
  const jobs = problems.length === 0 ? resolveJobs(document, flow) : { value: noJobs, problems };
  const value: Case = {
    title: document.title,
    note: document.note ?? null,
    shapes,
    ...flow,
    pattern,
    trips: (document.trips ?? []).map(tripOf),
    branches: document.branches ?? "whereDifferent",
    ...jobs.value,
  };
  return { value, problems: jobs.problems.length > 0 ? jobs.problems : crossChecks(value) };
}

const noJobs = Object.fromEntries(jobBlocks.map(({ key }) => [key, null])) as CaseJobs;

/** Every job that the document asks for, ready to run, and all that is wrong with their blocks. */
function resolveJobs(document: CaseDocument, flow: Pick<Case, "fluid" | "speeds" | "walls" | "turbulenceIntensities">) {
  const jobs: Record<string, unknown> = { ...noJobs };
  const around: CaseSurroundings = {
    fluid: flow.fluid,
    speeds: flow.speeds.flatMap((stream) => ("speed" in stream ? [stream.speed] : [])),
    turbulenceIntensities: flow.turbulenceIntensities,
    sandGrainRoughnesses: flow.walls.flatMap((wall) => ("sandGrainRoughness" in wall ? [wall.sandGrainRoughness] : [])),
    sections: document.sections ?? [],
    documentOf: (block) => blockIn(document, block),
    jobOf: <Job>({ key }: { readonly key: string }) => (jobs[key] ?? undefined) as Job | undefined,
  };
  const problems: Problem[] = [];
  for (const block of jobBlocks) {
    const own = blockIn(document, block) ?? block.implied?.(around);
    if (own === undefined) continue;
    const resolved = block.resolve(own, around);
    if (resolved.ok) jobs[block.key] = resolved.value;
    else problems.push(...resolved.problems);
  }
  return { value: jobs as unknown as CaseJobs, problems };
}

function streamSpeeds(document: CaseDocument, fluid: FluidProperties | null): StreamSpeed[] {
  const { speedsMetresPerSecond, reynoldsNumbers = [] } = document;
  if (speedsMetresPerSecond === undefined) return rising(reynoldsNumbers).map((reynolds) => ({ reynolds, fluid }));
  return fluid === null ? [] : rising(speedsMetresPerSecond).map((speed) => ({ speed, fluid }));
}

function rising(values: Sweep): number[] {
  return expandSweep(values).sort((a, b) => a - b);
}

function patternWall({ surfacePattern }: CaseDocument): PatternWall | null {
  if (surfacePattern === undefined) return null;
  const pattern = patternOf(surfacePattern);
  const estimate = equivalentRoughness(pattern);
  return estimate.ok ? { pattern, estimate: estimate.value } : null;
}

function wallRoughnesses(document: CaseDocument, wall: PatternWall | null): WallRoughness[] {
  if (wall !== null) return [{ sandGrainRoughness: wall.estimate.sandGrainRoughness }];
  const { sandGrainRoughnessMetres, sandGrainRoughnessRatios = [] } = document;
  return sandGrainRoughnessMetres === undefined
    ? expandSweep(sandGrainRoughnessRatios).map((sandGrainRoughnessRatio) => ({ sandGrainRoughnessRatio }))
    : expandSweep(sandGrainRoughnessMetres).map((sandGrainRoughness) => ({ sandGrainRoughness }));
}

function refused(fileName: string, problems: readonly Problem[]): CaseReading {
  const [first] = problems;
  const others = problems.length - 1;
  const more = others === 0 ? "" : ` (and ${others} more ${others === 1 ? "problem" : "problems"})`;
  return { ok: false, problem: { ...first, message: `${fileName}: ${first.message}${more}` }, problems };
}
