import { Notifier } from "./notifier";

export type DialogName = "cases" | "import" | "glossary" | "guide" | "link";

/** What is open on the page; no part of a design. */
export interface PageState {
  readonly dialog: DialogName | null;
  readonly isDark: boolean;
}

export const pageState = new Notifier<PageState>({ dialog: null, isDark: false });

export function openDialog(dialog: DialogName): void {
  pageState.patch({ dialog });
}

export function closeDialog(): void {
  pageState.patch({ dialog: null });
}
