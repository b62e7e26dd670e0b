import { readKeptText } from "../files/storage";
import { keptComparisonName } from "./carriedOffset";

/** Brings an offset that was being carried when the page was left back into force, without the view being shown. */
export async function resumeCarriedOffset(): Promise<void> {
  const kept = await readKeptText(keptComparisonName);
  if (kept === null || !kept.includes('"carriedSet"')) return;
  try {
    const { startComparing } = await import("./compareSolving");
    await startComparing();
  } catch {
    // Without its program no offset is carried, and no label says so.
  }
}
