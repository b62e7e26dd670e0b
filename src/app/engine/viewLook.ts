import type { History } from "../store/history";

/** What the masthead shows of a view. */
export interface ViewLook {
  /** Title of what is worked on; the title of the case file that a save writes. */
  readonly title: string;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

/** The look of a view whose work is a history of inputs with a title. */
export function historyLook({ past, present, future }: History<{ readonly title: string }>): ViewLook {
  return { title: present.title, canUndo: past.length > 0, canRedo: future.length > 0 };
}
