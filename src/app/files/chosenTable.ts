import { problem, type Result, success } from "../../../shared/result";
import { mostTableBytes } from "../../../shared/tables/csvTable";

/** A table file that a person has chosen. */
export interface ChosenTable {
  readonly fileName: string;
  readonly text: string;
}

/**
 * The file that was chosen in a file field, which is emptied so that the same file can be chosen again.
 * @returns null when none was chosen; a problem when it is too large or no UTF-8 text
 */
export async function chosenTable(event: Event): Promise<Result<ChosenTable> | null> {
  const input = event.target as HTMLInputElement;
  const file = input.files?.[0];
  input.value = "";
  if (file === undefined) return null;
  if (file.size > mostTableBytes) {
    return problem(
      "size",
      `${file.name} has ${(file.size / 1e6).toFixed(1)} MB; a table must have at most ${mostTableBytes / 1e6} MB.`,
    );
  }
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(await file.arrayBuffer());
    return success({ fileName: file.name, text });
  } catch {
    return problem("encoding", `${file.name} is not UTF-8 text; save it as CSV in UTF-8.`);
  }
}
