import { demoCases, loadDemoCase } from "../files/demoCases";
import { readScreenHash } from "../files/screenLink";
import { readKeptText } from "../files/storage";
import { keptSection } from "../section/autosave";
import { showSectionScreen } from "../section/sectionScreen";
import { tell } from "../store/notices";
import { preferences } from "../store/preferences";
import { openCase } from "./openCase";
import { keepOpenedCase } from "./openedCaseKeeping";
import { showScreen } from "./screenContent";

const firstDemo = "harbour-league-puck.json";

/** What a visit starts with: the screen of the link, else where this browser left off, else the demo case. */
export async function showFirstScreen(): Promise<void> {
  await bringBackScreen();
  await keepOpenedCase();
}

async function bringBackScreen(): Promise<void> {
  const linked = await readScreenHash(location.hash);
  if (linked?.ok) {
    const faults = await showScreen(linked.value, "the link");
    if (faults.length === 0) {
      if (linked.value.parts.section === undefined) await bringBackSection();
      return;
    }
    tell("warning", `The link could not be opened in full: ${faults[0]}`);
  } else if (linked !== null) {
    tell("warning", linked.problem.message);
  }
  await bringBackSection();
}

async function bringBackSection(): Promise<void> {
  const kept = await readKeptText(keptSection);
  if (kept !== null && (await showSectionScreen(kept, "the autosave")).length === 0) {
    tell("news", "Your last design is back. Demo cases are in the panel Case.");
    return;
  }
  if (!demoCases.some((demo) => demo.fileName === firstDemo)) return;
  try {
    await openCase(firstDemo, await loadDemoCase(firstDemo), true);
    if (!preferences.value.guideSeen) {
      preferences.patch({ guideSeen: true });
      tell("news", "New here? The button Guide above shows the workbench in three steps.");
    }
  } catch {
    tell("warning", "The demo case could not be loaded.");
  }
}
