import { documentProblems } from "../document/documentProblems";
import { expandSweep, type Sweep } from "../document/expandSweep";
import { parseDocument } from "../document/parseDocument";
import { patternOf } from "../document/patternDocument";
import type { FluidProperties } from "../engine/fluid/fluidSpec";
import { resolveFluid } from "../engine/fluid/resolveFluid";
import { equivalentRoughness } from "../engine/pattern/equivalentRoughness";
import type { StreamSpeed, WallRoughness } from "../engine/section/stream";
import { resolveMeasurements } from "../jobs/evidence/resolveMeasurements";
import { resolvePuckCase } from "../jobs/puck/puckcase/resolvePuckCase";
import { resolveTrial } from "../jobs/trial/resolveTrial";
import { resolveTunnel } from "../jobs/tunnel/resolveTunnel";
import { fractionOf } from "../numerics/degreesAndPercent";
import type { Problem } from "../result";
import { type CaseDocument, caseDocument } from "./caseDocument";
import { caseShapes } from "./caseShapes";
import { crossChecks } from "./crossChecks";
import { tripOf } from "./flowDocument";
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

function resolve(document: CaseDocument): { value: Case; problems: Problem[] } {
  const problems: Problem[] = [];
  const { shapes, problems: shapeProblems } = caseShapes(document);
  problems.push(...shapeProblems);
  const fluid = document.fluid === undefined ? null : resolveFluid(document.fluid);
  if (fluid?.ok === false) problems.push({ ...fluid.problem, field: `fluid.${fluid.problem.field}` });
  const properties = fluid?.ok === true ? fluid.value : null;
  const pattern = patternWall(document);
  let value: Case = {
    title: document.title,
    note: document.note ?? null,
    shapes,
    fluid: properties,
    speeds: streamSpeeds(document, properties),
    walls: wallRoughnesses(document, pattern),
    pattern,
    turbulenceIntensities: expandSweep(document.turbulencePercents ?? []).map(fractionOf),
    trips: (document.trips ?? []).map(tripOf),
    branches: document.branches ?? "whereDifferent",
    puck: null,
    measurements: null,
    tunnel: null,
    trial: null,
  };
  if (problems.length === 0 && document.puck !== undefined && value.fluid !== null) {
    const puck = resolvePuckCase(document.puck, {
      fluid: value.fluid,
      speeds: rising(document.speedsMetresPerSecond ?? []),
      turbulenceIntensities: value.turbulenceIntensities,
      sandGrainRoughness: expandSweep(document.sandGrainRoughnessMetres ?? [])[0],
    });
    if (!puck.ok) return { value, problems: [...puck.problems] };
    value = { ...value, puck: puck.value };
  }
  if (problems.length === 0 && document.measurements !== undefined) {
    const about = {
      fluid: value.fluid,
      sections: document.sections ?? [],
      hasTunnelRuns: document.tunnel?.runs !== undefined,
    };
    const measurements = resolveMeasurements(document.measurements, about);
    if (!measurements.ok) return { value, problems: [...measurements.problems] };
    value = { ...value, measurements: measurements.value };
  }
  if (problems.length === 0 && document.tunnel !== undefined) {
    const tunnel = resolveTunnel(document.tunnel);
    if (!tunnel.ok) return { value, problems: [...tunnel.problems] };
    value = { ...value, tunnel: tunnel.value };
  }
  if (problems.length === 0 && document.trial !== undefined) {
    const trial = resolveTrial(document.trial);
    if (!trial.ok) return { value, problems: [...trial.problems] };
    value = { ...value, trial: trial.value };
  }
  if (problems.length === 0) problems.push(...crossChecks(value));
  return { value, problems };
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
