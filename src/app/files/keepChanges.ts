import { keepText } from "./storage";

/** How long a view must be left alone before it is kept, ms. */
const calmMilliseconds = 600;

/** What is kept of a view, and when. */
export interface Keeping {
  /** The name under which the browser keeps the text. */
  readonly name: string;
  readonly text: () => string;
  /** The text that needs no keeping, since it was just brought back. */
  readonly keptText: string;
  /** Calls back after every change that may alter the text. */
  readonly follow: (changed: () => void) => void;
}

/**
 * Keeps a view's text in the browser shortly after every change and when the page is left. Where the browser refuses, it is
 * tried again at the next change, and the page asks before it goes.
 */
export function keepChanges({ name, text, keptText, follow }: Keeping): void {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let last = keptText;
  let isRefused = false;
  const save = async () => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    const present = text();
    if (present === last) return;
    const before = last;
    last = present;
    isRefused = !(await keepText(name, present));
    if (isRefused && last === present) last = before;
  };
  follow(() => {
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => void save(), calmMilliseconds);
  });
  addEventListener("pagehide", () => void save());
  addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void save();
  });
  addEventListener("beforeunload", (event) => {
    if (isRefused && text() !== last) event.preventDefault();
  });
}
