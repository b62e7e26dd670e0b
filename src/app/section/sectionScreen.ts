import { caseText } from "../files/caseText";
import { preferences } from "../store/preferences";
import { readDesign } from "./caseRunning";
import { readSectionScreen, type SectionScreen } from "./readSectionScreen";
import { sectionTools } from "./sectionStores";
import { addPin, unpin, workbench } from "./workbench";

/** The section view's screen as text, for a link or the autosave. */
export function sectionScreenText(): string {
  const { history, pins } = workbench.value;
  const screen: SectionScreen = {
    design: caseText(history.present),
    pins: pins.map((pin) => caseText(pin.design)),
    positionMeasure: preferences.value.positionMeasure,
    ...sectionTools.value,
  };
  return JSON.stringify(screen);
}

/** Puts a screen back. @returns what could not be read; empty when all was */
export async function showSectionScreen(text: string, from: string): Promise<readonly string[]> {
  const screen = readSectionScreen(text);
  if (screen === null) return [`${from} does not hold a screen of the section view`];
  const faults: string[] = [];
  const design = await readDesign(from, screen.design);
  if (design.ok) workbench.show(design.value);
  else faults.push(...design.problems.map((problem) => problem.message));
  for (const pin of workbench.value.pins) unpin(pin.id);
  for (const pinText of screen.pins) {
    const pinned = await readDesign(from, pinText);
    if (pinned.ok) addPin(pinned.value, null, null);
    else faults.push(...pinned.problems.map((problem) => problem.message));
  }
  preferences.patch({ positionMeasure: screen.positionMeasure });
  sectionTools.value = { pattern: screen.pattern, layerChoice: screen.layerChoice };
  return faults;
}
