import { largestCaseBytes } from "../../shared/document/limits";
import { problem, type Result, success } from "../../shared/result";
import { systemReason } from "./systemReason";

/** The name of a case that is read from standard input. */
export const standardInputName = "-";

/** A case file's name for messages. */
export function shownInputName(name: string): string {
  return name === standardInputName ? "standard input" : name;
}

/** All of standard input as text; given up as soon as it is too long for a case. */
export async function standardInputText(): Promise<Result<string>> {
  const shown = shownInputName(standardInputName);
  const chunks: Uint8Array[] = [];
  let size = 0;
  try {
    for await (const chunk of process.stdin) {
      chunks.push(chunk);
      size += chunk.length;
      if (size > largestCaseBytes) {
        return problem("file", `${shown}: goes on after ${largestCaseBytes / 1e6} MB; a case must have at most that`);
      }
    }
  } catch (error) {
    return problem("file", `${shown}: cannot be read: ${systemReason(error)}`);
  }
  try {
    return success(new TextDecoder("utf-8", { fatal: true }).decode(Buffer.concat(chunks)));
  } catch {
    return problem("file", `${shown}: is not UTF-8 text; it must be a case in JSON`);
  }
}
