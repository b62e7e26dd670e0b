import type { Problem } from "../../../shared/result";
import { Notifier } from "../store/notifier";
import { type ViewName, viewNames } from "../store/pageState";
import { sectionPart } from "./sectionPart";
import type { ViewLook } from "./viewLook";

/**
 * What a view does for the page as a whole. A view offers itself in four places, each one line:
 *
 * 1. its name and button text in `store/pageState.ts` (`ViewName`, `viewTexts`);
 * 2. its element in `components/app/laterViews.ts`. The element has a method `printReport(): Promise<void>` (interface
 *    `ReportingView` there), which prepares the printed page and calls `window.print()`;
 * 3. its case keys and its part, loaded when they are first needed, in `laterParts` below;
 * 4. the part itself, a plain object in the view's own folder, built on the view's store.
 *
 * The page then does the rest: undo and redo by button and key, the dialog Cases (save, open, recent), the link, and
 * opening a case file from any view.
 */
export interface ViewPart {
  look(): ViewLook;
  /** Calls back after every change of the view's store. @returns a function that ends it */
  subscribe(listener: () => void): () => void;
  undo(): void;
  redo(): void;
  rename(title: string): void;
  /**
   * The view's keys of the case file from what it works on now, as plain JSON data; without version, title and note.
   * Equal work must give equal keys: the page compares them to see whether anything was changed since the case was
   * opened, and writes the file's own keys back as they were when nothing was.
   */
  caseKeys(): Readonly<Record<string, unknown>>;
  /**
   * Shows the view's keys of a case file, as one step of the history.
   * @param text the whole file; it is not checked yet beyond being a JSON object, and may be hostile
   * @returns what is wrong with the view's keys; empty when they are shown
   */
  openCase(fileName: string, text: string): Promise<readonly Problem[]>;
  /** Everything that reproduces the view's screen, for a link: text that `showScreen` reads, at most `longestPart`. */
  screenText(): string;
  /**
   * Shows the view's part of a link. The text may be hostile: check shape, counts and sizes as for a case file.
   * @param from where it comes from, in words, for messages
   * @returns what could not be read; empty when all was
   */
  showScreen(text: string, from: string): Promise<readonly string[]>;
}

/** A view whose program is loaded when it is first asked for. */
interface LaterPart {
  /** Top-level keys of the case file that only this view reads; a case file with one of them loads the part. */
  readonly ownKeys: readonly string[];
  readonly load: () => Promise<ViewPart>;
}

const laterParts: Readonly<Record<Exclude<ViewName, "section">, LaterPart>> = {
  puck: { ownKeys: ["puck"], load: async () => (await import("../puck/puckPart")).puckPart },
  tunnel: { ownKeys: ["tunnel"], load: async () => (await import("../tunnel/tunnelPart")).tunnelPart },
  trial: { ownKeys: ["trial"], load: async () => (await import("../trial/trialPart")).trialPart },
  compare: { ownKeys: ["measurements"], load: async () => (await import("../compare/comparePart")).comparePart },
};

/** Top-level keys of the case file that only this view reads. */
export function ownKeys(view: ViewName): readonly string[] {
  return view === "section" ? ["sections"] : laterParts[view].ownKeys;
}

/** The views whose keys a case file has, in the order of the buttons. */
export function viewsOf(document: Readonly<Record<string, unknown>>): ViewName[] {
  return viewNames.filter((view) => ownKeys(view).some((key) => Object.hasOwn(document, key)));
}

/** The parts that are loaded, by the view's name. */
export const loadedParts = new Notifier<Readonly<Partial<Record<ViewName, ViewPart>>>>({ section: sectionPart });

/** A view's part, loaded if it is not yet. Rejects when its program cannot be loaded. */
export async function loadPart(view: ViewName): Promise<ViewPart> {
  const part = loadedParts.value[view] ?? (view === "section" ? sectionPart : await laterParts[view].load());
  if (loadedParts.value[view] === undefined) loadedParts.patch({ [view]: part });
  return part;
}
