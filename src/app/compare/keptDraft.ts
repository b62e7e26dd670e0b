import { keepChanges } from "../files/keepChanges";
import { readKeptText } from "../files/storage";
import { Notifier } from "../store/notifier";
import { emptyDraft, type ImportDraft, withTable } from "./importDraft";

/** The table that is being imported. */
export const importDraft = new Notifier<ImportDraft>(emptyDraft);

const keptName = "measurements-draft";

/** Brings back the table that was being imported, with the columns guessed anew; then keeps every change of it. */
export async function keepDraft(): Promise<void> {
  await bringBack();
  keepChanges({
    name: keptName,
    text: draftText,
    keptText: draftText(),
    follow: (changed) => importDraft.subscribe(changed),
  });
}

async function bringBack(): Promise<void> {
  const kept = await readKeptText(keptName);
  if (kept === null) return;
  try {
    const { text, name, source } = JSON.parse(kept) as Record<string, unknown>;
    if (typeof text !== "string" || typeof name !== "string" || typeof source !== "string") return;
    importDraft.value = { ...withTable(importDraft.value, text, null), name, source };
  } catch {
    // What was kept is damaged: the import starts empty.
  }
}

function draftText(): string {
  const { text, name, source } = importDraft.value;
  return JSON.stringify({ text, name, source });
}
