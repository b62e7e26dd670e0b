import { resolve } from "node:path";
import { type CaseFiles, inCaseFolders } from "./caseFolders";
import { endOnSignals, refuse, unwritten } from "./command";
import type { SheetsInput } from "./commandInputs";
import { openNamedCase } from "./openCaseFile";
import { writeFolder } from "./outputFolder";
import { caseSheets } from "./sheetMakers";
import { shownInputName } from "./standardInput";
import { print } from "./standardOutput";

export async function runSheets(input: SheetsInput): Promise<number> {
  endOnSignals();
  const cases: CaseFiles[] = [];
  for (const file of input.files) {
    const shown = shownInputName(file);
    const opened = await openNamedCase(file);
    if (!opened.ok) return refuse(opened.problem.message);
    const sheets = caseSheets(opened.value.theCase);
    if (!sheets.ok) return refuse(`${shown}: ${sheets.problem.message}`);
    if (sheets.value.length === 0) {
      return refuse(`${shown}: has nothing to fill in; sheets need a tunnel test or a player trial`);
    }
    cases.push({ file, made: sheets.value });
  }
  const files = inCaseFolders(cases);
  if (!files.ok) return refuse(files.problem.message);
  const written = writeFolder(resolve(input.folder), input.folder, files.value, input.isReplacing);
  if (!written.ok)
    return written.problem.code === "unwritten" ? unwritten(written.problem.message) : refuse(written.problem.message);
  return print(`${files.value.map(({ name }) => name).join("\n")}\n`);
}
