import { Notifier } from "../store/notifier";

/** The step that each view with steps shows, by the view's name; kept in the browser, no part of the work itself. */
export type ShownSteps = Readonly<Record<string, string>>;

const storageKey = "wakewright-steps";

export const shownSteps = new Notifier<ShownSteps>(readStored());

/** Shows a step and keeps the choice. Blocked storage only means that it lasts for this visit. */
export function showStep(view: string, step: string): void {
  shownSteps.patch({ [view]: step });
  try {
    localStorage.setItem(storageKey, JSON.stringify(shownSteps.value));
  } catch {
    // A choice of step is not worth a message.
  }
}

/** The step of a view, held to those that there are. */
export function stepOf(steps: ShownSteps, view: string, known: readonly string[]): string {
  const step = steps[view];
  return step !== undefined && known.includes(step) ? step : known[0];
}

function readStored(): ShownSteps {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(storageKey) ?? "null");
    if (typeof stored !== "object" || stored === null) return {};
    return Object.fromEntries(Object.entries(stored).filter(([, step]) => typeof step === "string"));
  } catch {
    return {};
  }
}
