import { caseText } from "../files/caseText";
import type { ScreenContent } from "../files/screenLink";
import { preferences } from "../store/preferences";
import { addPin, changeDesign, startWorkbench, unpin, workbench } from "../store/workbench";
import { readDesign } from "./caseRunning";

/** What the screen shows, for a link or the autosave. */
export function screenContent(): ScreenContent {
  const { history, pins } = workbench.value;
  return {
    version: 1,
    design: caseText(history.present),
    pins: pins.map((pin) => caseText(pin.design)),
    positionMeasure: preferences.value.positionMeasure,
  };
}

/** Puts a screen back. @returns what could not be read; empty when all was */
export async function showScreen(content: ScreenContent, from: string): Promise<readonly string[]> {
  const faults: string[] = [];
  const design = await readDesign(from, content.design);
  if (design.ok) {
    if (workbench.value.solved === null) workbench.value = startWorkbench(design.value);
    else changeDesign(design.value);
  } else faults.push(...design.problems.map((problem) => problem.message));
  for (const pin of workbench.value.pins) unpin(pin.id);
  for (const text of content.pins) {
    const pinned = await readDesign(from, text);
    if (pinned.ok) addPin(pinned.value, null, null);
    else faults.push(...pinned.problems.map((problem) => problem.message));
  }
  preferences.patch({ positionMeasure: content.positionMeasure });
  return faults;
}
