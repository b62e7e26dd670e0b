import { planResult } from "./planResult";
import { codeKeyCsv, scoreSheetCsv } from "./scoreSheetCsv";
import { codeKeyHtml, scoreSheetHtml } from "./scoreSheetHtml";
import type { TrialCase } from "./trialCase";

/** What a trial needs on paper: score sheets to print and to fill in, and the key of the codes in files of its own. */
export function trialSheetFiles(
  title: string,
  theCase: TrialCase,
): { readonly name: string; readonly content: string }[] {
  const { setup, plan } = theCase;
  return [
    { name: "score-sheets.html", content: scoreSheetHtml(title, setup, plan) },
    { name: "score-sheets.csv", content: scoreSheetCsv({ plan: planResult(theCase) }) },
    { name: "code-key.html", content: codeKeyHtml(title, setup) },
    { name: "code-key.csv", content: codeKeyCsv(setup.pucks) },
  ];
}
