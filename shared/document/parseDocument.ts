import type * as z from "zod";
import type { Problem } from "../result";
import { documentProblems } from "./documentProblems";
import { largestCaseBytes } from "./limits";
import { parseJson } from "./parseJson";

export type DocumentReading<Document> =
  | { readonly ok: true; readonly value: Document }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads the keys that a schema knows from a case file's text, which may be hostile: its size is checked first.
 * @returns every fault with its place when the text does not fit the schema
 */
export function parseDocument<Schema extends z.ZodType>(
  text: string,
  schema: Schema,
): DocumentReading<z.output<Schema>> {
  if (text.length > largestCaseBytes) {
    const message = `the file has ${text.length} characters; a case file must have at most ${largestCaseBytes}`;
    return { ok: false, problems: [{ code: "size", message }] };
  }
  const json = parseJson(text);
  if (!json.ok) return { ok: false, problems: [json.problem] };
  const parsed = schema.safeParse(json.value);
  return parsed.success
    ? { ok: true, value: parsed.data }
    : { ok: false, problems: documentProblems(json.value, parsed.error) };
}
