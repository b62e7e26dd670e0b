import { writeSync } from "node:fs";

/** What every command of the project ends with. */
export const exitDone = 0;
/** Results are there, but some are missing or did not converge. */
export const exitIncomplete = 1;
export const exitUnusableInput = 2;
const exitFault = 70;
/** What was computed could not be written in full: EX_IOERR of BSD's sysexits. */
export const exitUnwritable = 74;
const exitInterrupted = 130;

/**
 * Has a signal end the program with its usual exit status.
 * @param leave puts things in order first: nothing half-written may stay behind
 */
export function endOnSignals(leave: () => void = () => {}): void {
  const stop = (status: number) => () => {
    leave();
    process.exit(status);
  };
  process.once("SIGINT", stop(exitInterrupted));
  process.once("SIGTERM", stop(143));
  process.once("SIGHUP", stop(129));
}

/** Says on one line why the input cannot be used, and gives the exit status for it. */
export function refuse(message: string): number {
  say(message);
  return exitUnusableInput;
}

/** Says on one line why the results could not be written, and gives the exit status for it. */
export function unwritten(message: string): number {
  say(message);
  return exitUnwritable;
}

/** One line on standard error; where that cannot be written either, the exit status must do. */
export function say(message: string): void {
  try {
    writeSync(2, `${message.replace(/\s+/g, " ")}\n`);
  } catch {
    // Nobody is left to be told.
  }
}

/** Runs a command; a fault in the program ends in one line and a status of its own. */
export async function runCommand(main: () => Promise<number>): Promise<void> {
  // Progress that nobody can read is no fault.
  process.stderr.on("error", () => {});
  try {
    process.exitCode = await main();
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    say(`fault in the program, not in the case: ${reason}; please report it`);
    process.exitCode = exitFault;
  }
}
