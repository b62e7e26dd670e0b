import { Notifier } from "./notifier";

export type DialogName = "cases" | "import" | "glossary" | "guide" | "link";

export type ViewName = "section" | "puck" | "tunnel" | "trial" | "compare";

/** The views by the name on their button, in the order of the work. */
export const viewTexts: Readonly<Record<ViewName, string>> = {
  section: "Section",
  puck: "Puck",
  tunnel: "Tunnel",
  trial: "Players",
  compare: "Measured",
};

export const viewNames = Object.keys(viewTexts) as ViewName[];

/** What is open on the page; no part of a design. */
export interface PageState {
  readonly view: ViewName;
  readonly dialog: DialogName | null;
  readonly isDark: boolean;
}

export const pageState = new Notifier<PageState>({ view: "section", dialog: null, isDark: false });

export function openDialog(dialog: DialogName): void {
  pageState.patch({ dialog });
}

export function closeDialog(): void {
  pageState.patch({ dialog: null });
}
