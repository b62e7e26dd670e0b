import { caseText } from "../files/caseText";
import { preferences } from "../store/preferences";
import { addPin, changeDesign, mostPins, startWorkbench, unpin, workbench } from "../store/workbench";
import { readDesign } from "./caseRunning";

/** What the section view shows, as plain data. Designs are case-file texts, checked like any case file. */
interface SectionScreen {
  readonly design: string;
  readonly pins: readonly string[];
  readonly positionMeasure: "angle" | "arc";
}

/** The section view's screen as text, for a link or the autosave. */
export function sectionScreenText(): string {
  const { history, pins } = workbench.value;
  const screen: SectionScreen = {
    design: caseText(history.present),
    pins: pins.map((pin) => caseText(pin.design)),
    positionMeasure: preferences.value.positionMeasure,
  };
  return JSON.stringify(screen);
}

/** Puts a screen back. @returns what could not be read; empty when all was */
export async function showSectionScreen(text: string, from: string): Promise<readonly string[]> {
  const screen = readScreen(text);
  if (screen === null) return [`${from} does not hold a screen of the section view`];
  const faults: string[] = [];
  const design = await readDesign(from, screen.design);
  if (design.ok) {
    if (workbench.value.solved === null) workbench.value = startWorkbench(design.value);
    else changeDesign(design.value);
  } else faults.push(...design.problems.map((problem) => problem.message));
  for (const pin of workbench.value.pins) unpin(pin.id);
  for (const pinText of screen.pins) {
    const pinned = await readDesign(from, pinText);
    if (pinned.ok) addPin(pinned.value, null, null);
    else faults.push(...pinned.problems.map((problem) => problem.message));
  }
  preferences.patch({ positionMeasure: screen.positionMeasure });
  return faults;
}

function readScreen(text: string): SectionScreen | null {
  try {
    const screen: unknown = JSON.parse(text);
    return isSectionScreen(screen) ? screen : null;
  } catch {
    return null;
  }
}

function isSectionScreen(screen: unknown): screen is SectionScreen {
  if (typeof screen !== "object" || screen === null) return false;
  const { design, pins, positionMeasure } = screen as Partial<Record<keyof SectionScreen, unknown>>;
  return (
    typeof design === "string" &&
    Array.isArray(pins) &&
    pins.length <= mostPins &&
    pins.every((pin) => typeof pin === "string") &&
    (positionMeasure === "angle" || positionMeasure === "arc")
  );
}
