import type { Problem } from "../../../shared/result";
import { rememberRecent } from "../files/storage";
import { tell } from "../store/notices";
import { changeDesign } from "../store/workbench";
import { cancelCase, readDesign, runCaseFile } from "./caseRunning";

/**
 * Opens a case file: its first section becomes the design, its pucks those of the puck view, and all of it is run.
 * @returns what is wrong with the file; empty when it was opened
 */
export async function openCase(fileName: string, text: string): Promise<readonly Problem[]> {
  cancelCase();
  const reading = await readDesign(fileName, text);
  if (!reading.ok) return reading.problems;
  changeDesign(reading.value);
  if (text.includes('"puck"')) void openPucks(fileName, text);
  void rememberRecent({ fileName, title: reading.value.title, text, at: Date.now() });
  void runCaseFile(fileName, reading.value.title, text);
  return [];
}

/** The puck view's program is loaded when a case has pucks, not before. */
async function openPucks(fileName: string, text: string): Promise<void> {
  const [{ hasPuckBlock }, { openPuckCase }] = await Promise.all([
    import("../puck/puckCaseText"),
    import("../puck/openPuckCase"),
  ]);
  const problems = hasPuckBlock(text) ? await openPuckCase(fileName, text) : [];
  if (problems.length > 0) tell("warning", `The pucks of ${fileName} could not be opened: ${problems[0].message}`);
}
