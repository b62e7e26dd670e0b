import { type Entry, typedNumber } from "./setupEntries";
import type { TrialInputs } from "./trialInputs";

/** A typed drag; empty takes it away. */
export function enterDrag({ pucks }: TrialInputs, id: number, text: string): Entry {
  const drag = text.trim() === "" ? null : typedNumber(text);
  if (drag !== null && !(drag > 0 && drag <= 1e6)) {
    return { ok: false, message: `A drag must be a number above 0, or empty; "${text.trim()}" is not.` };
  }
  return { ok: true, change: { pucks: pucks.map((puck) => (puck.id === id ? { ...puck, drag } : puck)) } };
}
