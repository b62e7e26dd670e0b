import { writeSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";
import { exitDone, exitUnwritable, say } from "./command";
import { systemCode, systemReason } from "./systemReason";

const standardOutput = 1;

/** Pause before a reader that is slower than we are is tried again, ms. */
const betweenTries = 5;

/**
 * Writes all of a text to standard output and checks that it went. A stream of Node would take a part that fits for the
 * whole when a disk is full.
 * @returns the exit status: when it cannot be written, that was said on standard error
 */
export async function print(text: string): Promise<number> {
  const bytes = Buffer.from(text);
  let written = 0;
  while (written < bytes.length) {
    try {
      const count = writeSync(standardOutput, bytes, written);
      if (count === 0) await pause(betweenTries);
      written += count;
    } catch (error) {
      const code = systemCode(error);
      // The reader has seen enough, for instance `head`: not a failure of ours.
      if (code === "EPIPE") return exitDone;
      if (code !== "EAGAIN") {
        say(`standard output: cannot be written: ${systemReason(error)}; ${written} of ${bytes.length} bytes went out`);
        return exitUnwritable;
      }
      await pause(betweenTries);
    }
  }
  return exitDone;
}
