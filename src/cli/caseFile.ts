import { readFileSync, statSync } from "node:fs";
import { largestCaseBytes } from "../../shared/document/limits";
import { problem, type Result, success } from "../../shared/result";
import { systemReason } from "./systemReason";

/**
 * The text of a case file. Its size is looked at before anything is read. Messages name the file.
 * @param what      what the file must be, for messages
 * @param mostBytes largest size that is read
 */
export function caseFileText(
  path: string,
  shownName: string,
  what = "a case file",
  mostBytes = largestCaseBytes,
): Result<string> {
  try {
    const stats = statSync(path);
    if (stats.isDirectory()) return problem("file", `${shownName}: is a directory; it must be ${what}`);
    if (!stats.isFile()) return problem("file", `${shownName}: is not a regular file; it must be ${what}`);
    if (stats.size > mostBytes) {
      return problem(
        "file",
        `${shownName}: has ${(stats.size / 1e6).toFixed(1)} MB; ${what} must have at most ${mostBytes / 1e6} MB`,
      );
    }
    return success(new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(path)));
  } catch (error) {
    if (error instanceof TypeError)
      return problem("file", `${shownName}: is not UTF-8 text; it must be ${what} in JSON`);
    return problem("file", `${shownName}: cannot be read: ${systemReason(error)}`);
  }
}
