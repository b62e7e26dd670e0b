import type { Problem } from "../../../shared/result";
import { rememberRecent } from "../files/storage";
import { changeDesign } from "../store/workbench";
import { cancelCase, readDesign, runCaseFile } from "./caseRunning";

/**
 * Opens a case file: its first section becomes the design, and the whole of it is run.
 * @returns what is wrong with the file; empty when it was opened
 */
export async function openCase(fileName: string, text: string): Promise<readonly Problem[]> {
  cancelCase();
  const reading = await readDesign(fileName, text);
  if (!reading.ok) return reading.problems;
  changeDesign(reading.value);
  void rememberRecent({ fileName, title: reading.value.title, text, at: Date.now() });
  void runCaseFile(fileName, reading.value.title, text);
  return [];
}
