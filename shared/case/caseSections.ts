import type { CaseSection } from "../jobs/jobBlock";
import type { CaseDocument } from "./caseDocument";
import { blockIn, jobBlocks } from "./jobBlocks";

/** The sections of a case; where it names none, those that its jobs bring. */
export function caseSections(document: CaseDocument): readonly CaseSection[] {
  const { sections } = document;
  if (sections !== undefined) {
    return sections.map((section, i) => ({ section, field: `sections[${i}]`, sandGrainRoughness: null }));
  }
  return jobBlocks.flatMap((block) => {
    const own = blockIn(document, block);
    return own === undefined ? [] : (block.solves?.sections(own) ?? []);
  });
}
