import type { Outcome } from "./attackResult";

/** What a process tells of one try. */
export interface TryMessage {
  readonly seed: number;
  readonly outcome: Outcome;
  readonly milliseconds: number;
}

/** A stretch of seeds to try. */
export interface SeedRange {
  readonly from: number;
  readonly to: number;
}

/**
 * Serves a process of `seededAttack`: tries every seed that it is sent. What is thrown counts as a crash.
 * @param attempt one try; equal seeds must do the same
 */
export function serveSeeds(attempt: (seed: number) => Outcome): void {
  process.on("message", ({ from, to }: SeedRange) => {
    for (let seed = from; seed < to; seed++) {
      const start = process.cpuUsage();
      const outcome = attemptSafely(attempt, seed);
      const message: TryMessage = { seed, outcome, milliseconds: processorMilliseconds(start) };
      process.send?.(message);
    }
  });
  process.send?.("ready");
}

/** The program's own time: a busy machine holds a process up for seconds. */
function processorMilliseconds(start: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

function attemptSafely(attempt: (seed: number) => Outcome, seed: number): Outcome {
  try {
    return attempt(seed);
  } catch (error) {
    return { kind: "crashed", faults: [`crashed: ${error instanceof Error ? error.stack : String(error)}`] };
  }
}
