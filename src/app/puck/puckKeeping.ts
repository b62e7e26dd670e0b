import { loadDemoCase } from "../files/demoCases";
import { keepChanges } from "../files/keepChanges";
import { readKeptText } from "../files/storage";
import { demoPuck } from "./demoPuck";
import { demoRules, openPuckCase } from "./openPuckCase";
import { changePuck, presentPuck, puckBench } from "./puckBench";
import { puckCaseText } from "./puckCaseText";
import { bringBackSearch } from "./tradeoffKeeping";

const keptName = "puck";
const demoCaseName = "harbour-league-candidates.json";

let begun: Promise<void> | null = null;

/** Brings back the puck that this browser kept, else the demo; then keeps every change shortly after it. */
export function startPuckKeeping(): Promise<void> {
  begun ??= Promise.all([bringBack(), bringBackSearch()]).then(() =>
    keepChanges({
      name: keptName,
      text: currentText,
      keptText: currentText(),
      follow: (changed) => puckBench.subscribe(changed),
    }),
  );
  return begun;
}

async function bringBack(): Promise<void> {
  // A case that was opened before the view was first shown is newer than anything kept.
  if (presentPuck() !== demoPuck) return;
  const kept = await readKeptText(keptName);
  if (kept !== null && (await openPuckCase("the autosave", kept)).length === 0) return;
  try {
    if ((await openPuckCase(demoCaseName, await loadDemoCase(demoCaseName))).length === 0) return;
  } catch {
    // The page was built without this demo case: its own demo puck stays.
  }
  const rules = await demoRules();
  if (rules.ok) changePuck({ rules: rules.value });
}

function currentText(): string {
  const { history, pins } = puckBench.value;
  return puckCaseText(
    history.present,
    pins.map(({ make }) => make),
  );
}
