import { systemCode } from "./systemReason";

/** What every command of the project ends with. */
export const exitDone = 0;
/** Results are there, but some are missing or did not converge. */
export const exitIncomplete = 1;
export const exitUnusableInput = 2;
const exitFault = 70;
export const exitInterrupted = 130;

/**
 * Where paths are meant from: where the user stands. `npm run` moves to the package's folder and keeps that place.
 * @param script the command's name in package.json
 */
export function folderOf(script: string): string {
  return process.env.npm_lifecycle_event === script ? (process.env.INIT_CWD ?? process.cwd()) : process.cwd();
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
