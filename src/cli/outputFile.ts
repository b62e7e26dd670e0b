import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { problem, type Result, success } from "../../shared/result";
import { systemReason } from "./systemReason";
import { removeLeftovers, temporaryPath } from "./temporaryFiles";

/** A file that appears under its name only when it is complete. */
export interface OutputFile {
  /** Writes all of the content and puts the file in place. */
  commit(content: string | Uint8Array): Result<null>;
  /** Removes what was begun; a file that was in place before is left as it was. */
  discard(): void;
}

/**
 * Begins a file beside the target, so that an unwritable place is found before any work is done and the last step is one
 * rename on the same file system.
 * @param path      the target
 * @param shownName the target as the user wrote it, for messages
 * @param forbidden paths that must not be replaced, for instance the input
 * @param option    the option that named the target, for messages
 */
export function beginOutputFile(
  path: string,
  shownName: string,
  forbidden: readonly string[],
  option = "--out",
): Result<OutputFile> {
  let temporary: string;
  let target = path;
  try {
    if (existsSync(path)) {
      // A symbolic link stays a link: what it points to is replaced.
      target = realpathSync(path);
      if (!statSync(target).isFile()) {
        return problem(
          "output",
          `${option} ${shownName}: exists and is not a regular file; it must be the path of a file`,
        );
      }
      if (forbidden.some((other) => realpathSync(other) === target)) {
        return problem("output", `${option} ${shownName}: is the case file itself; it must be another path`);
      }
    }
    removeLeftovers(target);
    temporary = temporaryPath(target);
    closeSync(openSync(temporary, "wx"));
  } catch (error) {
    return problem(
      "output",
      `${option} ${shownName}: cannot be written: ${systemReason(error)}; it must be a path in a directory you can write to`,
    );
  }
  return success({
    commit(content) {
      try {
        writeWhole(temporary, content);
        renameSync(temporary, target);
        return success(null);
      } catch (error) {
        rmSync(temporary, { force: true });
        return problem("output", `${option} ${shownName}: cannot be written: ${systemReason(error)}`);
      }
    },
    discard() {
      rmSync(temporary, { force: true });
    },
  });
}

/** Writes to the disk itself before the file gets its name: after a power cut it is whole or not there. */
function writeWhole(path: string, content: string | Uint8Array): void {
  const file = openSync(path, "w");
  try {
    writeFileSync(file, content);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
