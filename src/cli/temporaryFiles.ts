import { createHash } from "node:crypto";
import { readdirSync, rmSync } from "node:fs";
import { hostname } from "node:os";
import { basename, dirname, join } from "node:path";
import { systemCode } from "./systemReason";

/** A word for this machine: another one that shares the disk has processes of its own. */
const machine = createHash("sha256").update(hostname()).digest("hex").slice(0, 6);

/** Where a file or folder is made before it is put in place: beside it, so that the last step is one rename. */
export function temporaryPath(target: string): string {
  return join(dirname(target), `${leftoverStart(target)}${process.pid}.tmp`);
}

/** Removes what runs that were killed left beside the target. Another run that is still at work keeps its own. */
export function removeLeftovers(target: string): void {
  const start = leftoverStart(target);
  let names: string[];
  try {
    names = readdirSync(dirname(target));
  } catch {
    // No such folder, or one that may be written but not listed: writing tells what is wrong, if anything is.
    return;
  }
  for (const name of names) {
    const id = name.startsWith(start) ? /^(\d+)\.tmp$/.exec(name.slice(start.length)) : null;
    if (id !== null && !isAtWork(Number(id[1]))) rmSync(join(dirname(target), name), { recursive: true, force: true });
  }
}

function leftoverStart(target: string): string {
  return `.${basename(target)}.${machine}-`;
}

/** Whether another process of this number runs; one that is not ours to signal does. */
function isAtWork(id: number): boolean {
  if (id === process.pid) return false;
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return systemCode(error) === "EPERM";
  }
}
