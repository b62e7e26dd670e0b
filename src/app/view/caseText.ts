import { caseVersion } from "../../../shared/document/caseVersion";
import type { Problem } from "../../../shared/result";

/** A view's part of a case file, or everything that is wrong with it. */
export type CaseReading<Content> =
  | { readonly ok: true; readonly value: Content }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A view's keys as the text of a case file of their own. */
export function caseTextOf(title: string, keys: Readonly<Record<string, unknown>>): string {
  return JSON.stringify({ wakewrightCase: caseVersion, title, ...keys });
}
