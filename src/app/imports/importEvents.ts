import type { OutlineQuestion } from "../../../shared/outlines/importOutline";

declare global {
  /** What the import dialog asks of the page. */
  interface PageEvents {
    "outline-ask": OutlineQuestion;
    /** Ends the reading that runs. */
    "outline-cancel": undefined;
  }
}
