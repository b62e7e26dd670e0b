import type { Problem } from "../../../shared/result";

/** What the masthead shows of a view. */
export interface ViewLook {
  /** Title of what is worked on; the title of the case file that a save writes. */
  readonly title: string;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

/**
 * What a view does for the page as a whole. A view offers itself in four places, each one line:
 *
 * 1. its name and button text in `store/viewNames.ts`;
 * 2. its element in `components/app/laterViews.ts`, a `ViewElement`;
 * 3. its case keys and its part, loaded when they are first needed, in `views/viewRegistry.ts`;
 * 4. the part itself: a record given to `defineView`, in the view's own folder, built on the view's bench.
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
