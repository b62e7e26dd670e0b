import type { StoredCase } from "../files/storedCase";
import type { ViewName } from "../store/viewNames";

declare global {
  /** What components ask of the page as a whole. */
  interface PageEvents {
    /** A case file that a person has chosen. */
    "case-file": { readonly fileName: string; readonly text: Promise<string> };
    /** A file that was chosen cannot be a case, and why. */
    "case-refused": string;
    "cases-rename": string;
    /** Whether a view is to be in the case that is saved. */
    "cases-choose": { readonly view: ViewName; readonly isChosen: boolean };
    /** Saves the views' work in the browser, as a file, or makes a link of the screen. */
    "cases-save": "browser" | "file" | "link";
    "cases-reopen": StoredCase;
    "cases-forget": StoredCase;
    "open-dialog": "cases" | "import" | "glossary" | "guide" | "gallery" | "tour";
    "close-dialog": undefined;
    "view-choose": ViewName;
    "view-step": "undo" | "redo";
    "theme-choose": "system" | "light" | "dark";
    "print-report": undefined;
    /** Id of the notice that was read. */
    "notice-dismiss": number;
    /** A step of the guide is to be done. */
    "guide-step": "demo" | "round";
  }
}
