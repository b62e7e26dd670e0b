import { fork } from "node:child_process";
import { type AttackResult, Gathered } from "./attackResult";
import type { SeedRange, TryMessage } from "./seededProcess";

/** A try that takes longer has hung, ms: longer than a person waits without thinking the program is dead. */
const mostMilliseconds = 2000;
/** A busy machine may hold a process up for a while: it is ended only after this many times the limit. */
const patience = 5;

/**
 * Tries seeds 1 to `count` in a process, which is ended and started again behind a try that does not come back.
 * @param program file that calls `serveSeeds`
 */
export async function seededAttack(program: URL, count: number): Promise<AttackResult> {
  const gathered = new Gathered();
  let next = 1;
  while (next <= count) next = await tryFrom({ from: next, to: count + 1 }, program, gathered);
  return gathered.result;
}

/** @returns the seed to go on with */
function tryFrom(range: SeedRange, program: URL, gathered: Gathered): Promise<number> {
  return new Promise((resolve) => {
    const child = fork(program);
    let next = range.from;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const end = (fault: string | null) => {
      clearTimeout(timer);
      child.removeAllListeners();
      child.kill("SIGKILL");
      if (fault !== null) gathered.add(`seed ${next++}`, { kind: "lost", faults: [fault] });
      resolve(next);
    };
    const watch = () => {
      clearTimeout(timer);
      timer = setTimeout(() => end("hung"), patience * mostMilliseconds);
    };
    child.on("error", (error) => end(`ended its process: ${error.message}`));
    child.on("exit", () => end("ended its process"));
    child.on("message", (message: TryMessage | "ready") => {
      watch();
      if (message === "ready") {
        child.send(range);
        return;
      }
      const { outcome, milliseconds } = message;
      const slow = milliseconds > mostMilliseconds ? [`took ${milliseconds.toFixed(0)} ms`] : [];
      gathered.add(`seed ${message.seed}`, { ...outcome, faults: [...outcome.faults, ...slow] }, milliseconds);
      next = message.seed + 1;
      if (next === range.to) end(null);
    });
  });
}
