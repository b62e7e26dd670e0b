import type { CaseSurroundings, JobResolution } from "../jobBlock";
import type { CompareBlockDocument, conditionChoices } from "./compareBlockDocument";

/** A comparison ready to run. */
export interface CompareJob {
  readonly baseline: string;
  readonly conditions: (typeof conditionChoices)[number];
  readonly seed: number;
  /** Sections of the case, sweeps not written out. */
  readonly sectionCount: number;
}

export function resolveCompare(
  { baseline, conditions = "each", seed = 1 }: CompareBlockDocument,
  { sections }: CaseSurroundings,
): JobResolution<CompareJob> {
  const field = "compare.baseline";
  if (sections.length === 0) {
    const message = "compare needs a case with sections; it compares two or more of them";
    return { ok: false, problems: [{ code: "compare", message, field: "compare" }] };
  }
  const names = sections.flatMap(({ name }) => (name === undefined ? [] : [name]));
  // A swept section's name goes on with the value that it is swept to.
  if (!names.some((name) => baseline.startsWith(name))) {
    const known = names.length === 0 ? "no section of the case has a name" : `the names are ${names.join(", ")}`;
    const message = `${field} is "${baseline}"; it must be the name of a section, ${known}`;
    return { ok: false, problems: [{ code: "compare", message, field }] };
  }
  return { ok: true, value: { baseline, conditions, seed, sectionCount: sections.length } };
}
