import type { Problem } from "../../../shared/result";
import { loadDemoCase } from "../files/demoCases";
import { followInputs, keepChanges } from "../files/keepChanges";
import { readKeptText } from "../files/storage";
import { keptComparisonName } from "./carriedOffset";
import { compareBench, presentComparison } from "./compareBench";
import { compareCaseText, readCompareCase } from "./compareCaseText";
import { noMeasurements } from "./compareInputs";
import { importDraft, takeTable } from "./importDraft";
import { openCompareCase, showComparison } from "./openCompareCase";

const demoComparisonName = "harbour-measured.json";
const keptDraftName = "measurements-draft";

let begun: Promise<void> | null = null;

/** Brings back the measurements that this browser kept, else the demo; then keeps every change shortly after it. */
export function startCompareKeeping(): Promise<void> {
  begun ??= Promise.all([bringBack(), bringBackDraft()]).then(keepAll);
  return begun;
}

async function bringBack(): Promise<void> {
  // A case that was opened before the view was first shown is newer than anything kept.
  if (presentComparison() !== noMeasurements) return;
  const kept = await readKeptText(keptComparisonName);
  if (kept !== null && (await openCompareCase("the autosave", kept)).length === 0) return;
  // Somebody who has removed every set finds it so.
  if (kept !== null && !kept.includes('"measurements"')) return;
  try {
    await openDemoComparison();
  } catch {
    // The page was built without this demo case: the view starts empty.
  }
}

/** Shows the demonstration's measurements; its offset is carried only when a person asks for it. */
export async function openDemoComparison(): Promise<readonly Problem[]> {
  const reading = readCompareCase(await loadDemoCase(demoComparisonName));
  if (!reading.ok) return reading.problems;
  showComparison({ ...reading.value, carriedSet: null });
  return [];
}

/** The table that was being imported, with the columns guessed anew. */
async function bringBackDraft(): Promise<void> {
  const kept = await readKeptText(keptDraftName);
  if (kept === null) return;
  try {
    const { text, name, source } = JSON.parse(kept) as Record<string, unknown>;
    if (typeof text !== "string" || typeof name !== "string" || typeof source !== "string") return;
    takeTable(text, null);
    importDraft.patch({ name, source });
  } catch {
    // What was kept is damaged: the import starts empty.
  }
}

function draftText(): string {
  const { text, name, source } = importDraft.value;
  return JSON.stringify({ text, name, source });
}

function keepAll(): void {
  keepChanges({
    name: keptDraftName,
    text: draftText,
    keptText: draftText(),
    follow: (changed) => importDraft.subscribe(changed),
  });
  keepChanges({
    name: keptComparisonName,
    text: currentText,
    keptText: currentText(),
    follow: (changed) => followInputs(compareBench, changed),
  });
}

function currentText(): string {
  return compareCaseText(presentComparison());
}
