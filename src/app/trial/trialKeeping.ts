import type { Problem } from "../../../shared/result";
import { loadDemoCase } from "../files/demoCases";
import { keepText, readKeptText } from "../files/storage";
import { openTrialCase } from "./openTrialCase";
import { presentTrial, trialBench } from "./trialBench";
import { trialCaseText } from "./trialCaseText";
import { newTrial } from "./trialInputs";

const keptName = "trial";
const demoName = "harbour-trial.json";
const calmMilliseconds = 600;

let begun: Promise<void> | null = null;

/** Brings back the trial that this browser kept, else the demo; then keeps every change shortly after it. */
export function startTrialKeeping(): Promise<void> {
  begun ??= bringBack().then(keepChanges);
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

function keepChanges(): void {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let lastInputs = presentTrial();
  let last = trialCaseText(lastInputs);
  let refused = false;
  const save = async () => {
    timer = null;
    const text = trialCaseText(presentTrial());
    if (refused || text === last) return;
    last = text;
    refused = !(await keepText(keptName, text));
  };
  trialBench.subscribe(({ history }) => {
    if (history.present === lastInputs) return;
    lastInputs = history.present;
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => void save(), calmMilliseconds);
  });
  addEventListener("pagehide", () => void save());
}
