import type { MeasuredCorrection } from "../../../shared/jobs/evidence/carriedCorrection";
import { readKeptText } from "../files/storage";
import { Notifier } from "../store/notifier";

/** The measured offset that is carried to other views, each of which labels what it changes; null while none is. */
export const carriedOffset = new Notifier<MeasuredCorrection | null>(null);

/** Name under which this browser keeps the measurements. */
export const keptComparisonName = "measurements";

/** Brings an offset that was being carried when the page was left back into force, without the view being shown. */
export async function resumeCarriedOffset(): Promise<void> {
  const kept = await readKeptText(keptComparisonName);
  if (kept === null || !kept.includes('"carriedSet"')) return;
  try {
    const { startComparing } = await import("./comparing");
    await startComparing();
  } catch {
    // Without its program no offset is carried, and no label says so.
  }
}
