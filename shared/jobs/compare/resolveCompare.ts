import type { SectionDocument } from "../../document/sectionDocument";
import type { Problem } from "../../result";
import type { CaseSurroundings, JobResolution } from "../jobBlock";
import { type PuckCase, puckBlock } from "../puck/public";
import type { CompareBlockDocument, conditionChoices } from "./compareBlockDocument";
import type { UnknownDocument } from "./unknownDocument";

/** A comparison ready to run. */
export interface CompareJob {
  /** null where pucks have baselines of their own. */
  readonly baseline: string | null;
  readonly conditions: (typeof conditionChoices)[number];
  readonly seed: number;
  readonly unknown: UnknownDocument | undefined;
  /** The sections of the case as they stand in its file. */
  readonly documents: readonly SectionDocument[];
  /** The pucks of the case; null where its sections are compared. */
  readonly pucks: PuckCase | null;
}

/** How many designs a comparison studies, sweeps not written out. */
export function designCount({ documents, pucks }: CompareJob): number {
  return pucks === null ? documents.length : pucks.pucks.length;
}

/** Their names as the case gives them; those of sections without a name are left out. */
export function comparedNames({ documents, pucks }: CompareJob): string[] {
  if (pucks !== null) return pucks.pucks.map(({ spec }) => spec.name);
  return documents.flatMap(({ name }) => (name === undefined ? [] : [name]));
}

export function resolveCompare(
  { baseline, conditions = "each", seed = 1, unknown }: CompareBlockDocument,
  around: CaseSurroundings,
): JobResolution<CompareJob> {
  const pucks = around.jobOf(puckBlock) ?? null;
  const problems =
    pucks === null ? sectionProblems(baseline, unknown, around) : puckProblems(baseline, conditions, unknown, pucks);
  if (problems.length > 0) return { ok: false, problems };
  const documents = around.sections;
  return { ok: true, value: { baseline: baseline ?? null, conditions, seed, unknown, documents, pucks } };
}

const at = (field: string, message: string): Problem => ({ code: "compare", message: `${field} ${message}`, field });

function sectionProblems(
  baseline: string | undefined,
  unknown: UnknownDocument | undefined,
  { sections, speeds, sandGrainRoughnesses }: CaseSurroundings,
): Problem[] {
  if (sections.length === 0) {
    const message = "needs a case with sections or pucks; it compares two or more of them";
    return [at("compare", message)];
  }
  const names = sections.flatMap(({ name }) => (name === undefined ? [] : [name]));
  const known = names.length === 0 ? "no section of the case has a name" : `the names are ${names.join(", ")}`;
  const problems: Problem[] = [];
  if (baseline === undefined) {
    problems.push(at("compare.baseline", `is missing; it must be the name of a section, ${known}`));
  } else if (!names.some((name) => baseline.startsWith(name))) {
    // A swept section's name goes on with the value that it is swept to.
    problems.push(at("compare.baseline", `is "${baseline}"; it must be the name of a section, ${known}`));
  }
  const bySpeed = speeds.length > 0;
  if (unknown?.speedMetresPerSecond !== undefined && !bySpeed) {
    problems.push(at("compare.unknown.speedMetresPerSecond", "needs a case whose stream goes by speed"));
  }
  if (unknown?.reynoldsNumber !== undefined && bySpeed) {
    problems.push(at("compare.unknown.reynoldsNumber", "needs a case whose stream goes by Reynolds number"));
  }
  const inMetres = sandGrainRoughnesses.length > 0;
  if (unknown?.sandGrainRoughnessMetres !== undefined && !inMetres) {
    problems.push(at("compare.unknown.sandGrainRoughnessMetres", "needs a case with sandGrainRoughnessMetres"));
  }
  if (unknown?.sandGrainRoughnessRatio !== undefined && inMetres) {
    problems.push(at("compare.unknown.sandGrainRoughnessRatio", "needs a case with sandGrainRoughnessRatios"));
  }
  if (unknown?.orientationShares !== undefined) {
    problems.push(at("compare.unknown.orientationShares", "is for pucks; sections have incidenceDegrees"));
  }
  return problems;
}

const sectionsAlone = ["sandGrainRoughnessRatio", "reynoldsNumber", "incidenceDegrees"] as const;

function puckProblems(
  baseline: string | undefined,
  conditions: CompareJob["conditions"],
  unknown: UnknownDocument | undefined,
  { pucks, stream }: PuckCase,
): Problem[] {
  const problems: Problem[] = [];
  const names = pucks.map(({ spec }) => spec.name);
  if (baseline !== undefined && !names.includes(baseline)) {
    const message = `is "${baseline}"; it must be the name of a puck, the names are ${names.join(", ")}`;
    problems.push(at("compare.baseline", message));
  }
  if (conditions === "any") {
    problems.push(
      at("compare.conditions", 'is for sections; speeds and turbulence of pucks that are not known go into "unknown"'),
    );
  }
  for (const key of sectionsAlone) {
    if (unknown?.[key] !== undefined) problems.push(at(`compare.unknown.${key}`, "is for sections"));
  }
  const speed = unknown?.speedMetresPerSecond;
  const [slowest, fastest] = [stream.speeds[0], stream.speeds[stream.speeds.length - 1]];
  if (speed !== undefined && (speed.from < slowest || speed.to > fastest)) {
    const message = `is from ${speed.from} to ${speed.to}; it must lie within the speeds of the case, ${slowest} to ${fastest} m/s`;
    problems.push(at("compare.unknown.speedMetresPerSecond", message));
  }
  return problems;
}

/** Pucks are compared with their baselines without being asked for it. */
export function impliedComparison(around: Pick<CaseSurroundings, "jobOf">): CompareBlockDocument | undefined {
  const pucks = around.jobOf(puckBlock)?.pucks ?? [];
  return pucks.length > 1 ? {} : undefined;
}
