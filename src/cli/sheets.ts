import { resolve } from "node:path";
import { endOnSignals, exitDone, refuse } from "./command";
import type { SheetsInput } from "./commandInputs";
import { openNamedCase } from "./openCaseFile";
import { writeFolder } from "./outputFolder";
import { caseSheets } from "./sheetMakers";
import { shownInputName } from "./standardInput";

export async function runSheets(input: SheetsInput): Promise<number> {
  endOnSignals();
  const shown = shownInputName(input.file);
  const opened = await openNamedCase(input.file);
  if (!opened.ok) return refuse(opened.problem.message);
  const sheets = caseSheets(opened.value.theCase);
  if (!sheets.ok) return refuse(`${shown}: ${sheets.problem.message}`);
  const files = sheets.value;
  if (files.length === 0) {
    return refuse(`${shown}: has nothing to fill in; sheets need a tunnel test or a player trial`);
  }
  const written = writeFolder(resolve(input.folder), input.folder, files, input.isReplacing);
  if (!written.ok) return refuse(written.problem.message);
  process.stdout.write(`${files.map(({ name }) => name).join("\n")}\n`);
  return exitDone;
}
