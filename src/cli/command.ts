import { systemCode } from "./systemReason";

/** What every command of the project ends with. */
export const exitDone = 0;
/** Results are there, but some are missing or did not converge. */
export const exitIncomplete = 1;
export const exitUnusableInput = 2;
const exitFault = 70;
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
  process.stderr.write(`${message.replace(/\s+/g, " ")}\n`);
  return exitUnusableInput;
}

/** Runs a command; a fault in the program ends in one line and a status of its own. */
export async function runCommand(main: () => Promise<number>): Promise<void> {
  process.stdout.on("error", (error) => {
    // The reader has seen enough, for instance `head`: not a failure of ours.
    if (systemCode(error) === "EPIPE") process.exit(exitDone);
    throw error;
  });
  try {
    process.exitCode = await main();
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    process.stderr.write(`fault in the program, not in the case: ${reason.replace(/\s+/g, " ")}; please report it\n`);
    process.exitCode = exitFault;
  }
}
