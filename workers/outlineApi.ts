import { type ImportedOutline, importOutline, type OutlineQuestion } from "../shared/outlines/importOutline";
import type { Result } from "../shared/result";
import { holdLifeline, type Lifeline } from "./lifeline";

/** What the worker of imports does for the page: files from elsewhere are read where a hang can be ended. */
export interface OutlineApi extends Lifeline {
  importOutline(question: OutlineQuestion): Promise<Result<ImportedOutline>>;
}

export function createOutlineReader(): OutlineApi {
  return {
    holdLifeline,
    async importOutline(question) {
      return importOutline(question);
    },
  };
}
