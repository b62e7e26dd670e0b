import { type ChildProcess, spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

export const projectFolder = fileURLToPath(new URL("../../", import.meta.url));

export interface CommandEnd {
  readonly status: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Starts the case command. */
export function startCase(args: readonly string[], cwd = projectFolder): StartedCommand {
  return startCommand("case", args, cwd);
}

export interface StartedCommand {
  readonly child: ChildProcess;
  readonly end: Promise<CommandEnd>;
}

/** Starts a command as its own process, away from npm so that its exit status and output are its own. */
export function startCommand(
  name: "case" | "tradeoff" | "handoff" | "sheets",
  args: readonly string[],
  cwd = projectFolder,
): StartedCommand {
  const program = fileURLToPath(new URL(`../../src/cli/${name}.ts`, import.meta.url));
  const { npm_lifecycle_event: _event, INIT_CWD: _folder, ...env } = process.env;
  const child = spawn(process.execPath, ["--import", import.meta.resolve("tsx"), program, ...args], {
    cwd,
    env,
    stdio: ["ignore", "pipe", "pipe"],
  });
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
