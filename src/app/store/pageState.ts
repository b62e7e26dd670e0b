import { Notifier } from "./notifier";
import type { ViewName } from "./viewNames";

export type DialogName = "cases" | "import" | "glossary" | "guide" | "link" | "gallery" | "tour";

/** What is open on the page; no part of a design. */
export interface PageState {
  readonly view: ViewName;
  readonly dialog: DialogName | null;
  readonly isDark: boolean;
}

export const pageState = new Notifier<PageState>({ view: "section", dialog: null, isDark: false });

export function closeDialog(): void {
  pageState.patch({ dialog: null });
}
