import { Notifier } from "./notifier";
import type { ViewName } from "./viewNames";

/** The case file that was opened or saved last, whole: its keys that no view has changed are saved as they were. */
export interface OpenedCase {
  readonly fileName: string;
  readonly text: string;
  /** What each view that the file has keys for would have written right after it was opened. */
  readonly asOpened: Readonly<Partial<Record<ViewName, string>>>;
}

export const openedCase = new Notifier<OpenedCase | null>(null);
