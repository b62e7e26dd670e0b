import type { Design } from "../../../shared/case/design";
import { designToCase } from "../../../shared/case/designToCase";

/** A design as the text of a case file, which the command line runs as it is. */
export function caseText(design: Design): string {
  return `${JSON.stringify(designToCase(design), null, 2)}\n`;
}

/** A file name made of a title: lower case, words joined by hyphens. */
export function caseFileName(title: string): string {
  const stem = title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60);
  return `${stem || "case"}.json`;
}
