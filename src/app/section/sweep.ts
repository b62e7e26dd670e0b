import type { ResultRow } from "../../../shared/engine/section/resultRow";
import type { SweepInput, SweepRange } from "./sweepInputs";

export type SweepStatus = "idle" | "running" | "paused" | "done" | "cancelled";

/** One or two inputs of a design varied over ranges, and what is known so far. */
export interface Sweep {
  readonly status: SweepStatus;
  readonly inputs: readonly SweepInput[];
  readonly ranges: readonly SweepRange[];
  readonly workers: number;
  readonly total: number;
  readonly done: number;
  /** Seconds of work so far, pauses left out. */
  readonly seconds: number;
  /** By index of the first range, then of the second; null where nothing is known or nothing could be solved. */
  readonly rows: readonly (readonly (ResultRow | null)[])[];
  /** What could not be solved, each message once. */
  readonly problems: readonly string[];
}

export const noSweep: Sweep = {
  status: "idle",
  inputs: [],
  ranges: [],
  workers: 0,
  total: 0,
  done: 0,
  seconds: 0,
  rows: [],
  problems: [],
};

/** Seconds that a running sweep still needs at its pace so far; null before the first point is done. */
export function secondsLeft({ done, total, seconds }: Sweep): number | null {
  return done === 0 ? null : (seconds / done) * (total - done);
}
