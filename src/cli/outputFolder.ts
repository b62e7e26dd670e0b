import { existsSync, mkdirSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { problem, type Result, success } from "../../shared/result";
import { isDiskFault, systemReason } from "./systemReason";
import { removeLeftovers, temporaryPath } from "./temporaryFiles";

export interface NamedContent {
  /** Of a file in the folder, or by "/" in a folder of it. */
  readonly name: string;
  readonly content: string | Uint8Array;
}

/**
 * Writes files into a folder. All are written beside it first: a new folder appears whole, in one that is there each
 * file appears whole, and a fault or an interruption leaves no part behind.
 * @param shownName   the folder as the user wrote it, for messages
 * @param isReplacing whether files that are there already may be replaced
 * @returns a problem "unwritten" when the disk refused, "output" when the place must be another
 */
export function writeFolder(
  folder: string,
  shownName: string,
  files: readonly NamedContent[],
  isReplacing: boolean,
): Result<null> {
  let temporary: string | null = null;
  const leave = () => {
    if (temporary !== null) rmSync(temporary, { recursive: true, force: true });
  };
  process.once("exit", leave);
  try {
    const isThere = existsSync(folder);
    if (isThere && !statSync(folder).isDirectory()) {
      return problem("output", `--to ${shownName}: exists and is not a folder; it must be the path of a folder`);
    }
    const taken = files.find(({ name }) => existsSync(join(folder, name)));
    if (taken !== undefined && !isReplacing) {
      return problem(
        "output",
        `--to ${shownName}: ${taken.name} is there already; give --replace to replace it, or another folder`,
      );
    }
    const blocked = files.find(({ name }) => existsSync(join(folder, name)) && !statSync(join(folder, name)).isFile());
    if (blocked !== undefined) {
      return problem("output", `--to ${shownName}: ${blocked.name} is there and is not a regular file`);
    }
    mkdirSync(dirname(folder), { recursive: true });
    removeLeftovers(folder);
    temporary = temporaryPath(folder);
    mkdirSync(temporary);
    for (const { name, content } of files) {
      mkdirSync(dirname(join(temporary, name)), { recursive: true });
      writeFileSync(join(temporary, name), content);
    }
    if (isThere) {
      for (const { name } of files) mkdirSync(dirname(join(folder, name)), { recursive: true });
      for (const { name } of files) renameSync(join(temporary, name), join(folder, name));
    } else {
      renameSync(temporary, folder);
    }
    return success(null);
  } catch (error) {
    return problem(
      isDiskFault(error) ? "unwritten" : "output",
      `--to ${shownName}: cannot be written: ${systemReason(error)}; it must be a folder that you can write to`,
    );
  } finally {
    leave();
    process.off("exit", leave);
  }
}
