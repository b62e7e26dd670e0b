import type { Case } from "../../shared/case/resolvedCase";
import { trialSheetFiles } from "../../shared/trial/trialSheetFiles";
import type { NamedContent } from "./outputFolder";

/** Makes the sheets of one block of a case; none where the case does not have the block. */
type SheetMaker = (theCase: Case) => readonly NamedContent[];

/** Every block that has sheets. */
export const sheetMakers: readonly SheetMaker[] = [
  ({ title, trial }) => (trial === null ? [] : trialSheetFiles(title, trial)),
];

/** All sheets of a case. */
export function caseSheets(theCase: Case): NamedContent[] {
  return sheetMakers.flatMap((make) => make(theCase));
}
