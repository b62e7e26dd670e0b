import type { Case } from "../../shared/case/resolvedCase";
import { trialSheetFiles } from "../../shared/jobs/trial/trialSheetFiles";
import { runSheetFiles } from "../../shared/jobs/tunnel/runSheetFiles";
import { type Result, success } from "../../shared/result";
import type { NamedContent } from "./outputFolder";

/** Makes the sheets of one block of a case; none where the case does not have the block. */
type SheetMaker = (theCase: Case) => Result<readonly NamedContent[]>;

/** Every block that has sheets. */
export const sheetMakers: readonly SheetMaker[] = [
  ({ title, tunnel }) => (tunnel === null ? success([]) : runSheetFiles(tunnel, title)),
  ({ title, trial }) => success(trial === null ? [] : trialSheetFiles(title, trial)),
];

/** All sheets of a case. */
export function caseSheets(theCase: Case): Result<NamedContent[]> {
  const sheets: NamedContent[] = [];
  for (const make of sheetMakers) {
    const made = make(theCase);
    if (!made.ok) return made;
    sheets.push(...made.value);
  }
  return success(sheets);
}
