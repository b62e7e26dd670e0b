import { type ChildProcess, spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

export const projectFolder = fileURLToPath(new URL("../../", import.meta.url));

export interface CommandEnd {
  readonly status: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** What a command said on standard error apart from its progress, which a busy machine makes it tell. */
export function complaints(stderr: string | null): string {
  return (stderr ?? "").replace(/^\d+ of \d+ steps, .*\n/gm, "");
}

/** Starts the case command. */
export function startCase(args: readonly string[], cwd = projectFolder): StartedCommand {
  return startCommand("case", args, cwd);
}

export interface StartedCommand {
  readonly child: ChildProcess;
  readonly end: Promise<CommandEnd>;
}

/** The command of a checkout. */
export const programFile = fileURLToPath(new URL("../../src/setup/wakewright.mjs", import.meta.url));

/**
 * Starts a sub-command as its own process, away from npm so that its exit status and output are its own.
 * @param input what it finds on standard input; nothing when left out
 */
export function startCommand(
  name: string,
  args: readonly string[],
  cwd = projectFolder,
  input?: string,
): StartedCommand {
  const { npm_lifecycle_event: _event, INIT_CWD: _folder, ...env } = process.env;
  const child = spawn(process.execPath, [programFile, name, ...args], {
    cwd,
    env,
    stdio: ["pipe", "pipe", "pipe"],
  });
  // A command that has seen enough may end before it has read everything.
  child.stdin.on("error", () => {});
  child.stdin.end(input);
  let stdout = "";
  let stderr = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    stdout += text;
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    stderr += text;
  });
  const end = new Promise<CommandEnd>((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (status, signal) => resolve({ status, signal, stdout, stderr }));
  });
  return { child, end };
}

/** Runs the command to its end. */
export function runCaseCommand(args: readonly string[], cwd = projectFolder): Promise<CommandEnd> {
  return startCase(args, cwd).end;
}
