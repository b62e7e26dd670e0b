import type { Problem } from "../../../shared/result";
import { loadDemoCase } from "../files/demoCases";
import { followInputs, keepChanges } from "../files/keepChanges";
import { readKeptText } from "../files/storage";
import { openTrialCase } from "./openTrialCase";
import { presentTrial, trialBench } from "./trialBench";
import { trialCaseText } from "./trialCaseText";
import { newTrial } from "./trialInputs";

const keptName = "trial";
const demoName = "harbour-trial.json";

let begun: Promise<void> | null = null;

/** Brings back the trial that this browser kept, else the demo; then keeps every change shortly after it. */
export function startTrialKeeping(): Promise<void> {
  begun ??= bringBack().then(() =>
    keepChanges({
      name: keptName,
      text: currentText,
      keptText: currentText(),
      follow: (changed) => followInputs(trialBench, changed),
    }),
  );
  return begun;
}

async function bringBack(): Promise<void> {
  // A case that was opened before the view was first shown is newer than anything kept.
  if (presentTrial() !== newTrial) return;
  const kept = await readKeptText(keptName);
  if (kept !== null && (await openTrialCase("the autosave", kept)).length === 0) return;
  try {
    await openDemoTrial();
  } catch {
    // The page was built without this demo case: the view starts with a new trial.
  }
}

export async function openDemoTrial(): Promise<readonly Problem[]> {
  return openTrialCase(demoName, await loadDemoCase(demoName));
}

function currentText(): string {
  return trialCaseText(presentTrial());
}
