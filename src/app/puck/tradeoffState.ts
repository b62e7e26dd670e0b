import type { PuckCase } from "../../../shared/jobs/puck/puckCase";
import type { Evaluation } from "../../../shared/jobs/tradeoff/designSpace";
import type { TradeoffRun } from "../../../shared/jobs/tradeoff/tradeoffRun";
import type { PuckInputs } from "./puckInputs";

/** A search that was started: its inputs, the case made of them, how far it is, and every allowed puck found. */
export interface PuckSearchState {
  readonly inputs: PuckInputs;
  readonly theCase: PuckCase;
  readonly run: TradeoffRun;
  readonly allowed: readonly Evaluation[];
  /** Pucks outside the rules or that could not be made, and why the last one was. */
  readonly refused: number;
  readonly reason: string | null;
  /** Seconds of work so far, pauses left out. */
  readonly seconds: number;
}

export interface TradeoffBench {
  readonly status: "idle" | "running" | "paused" | "done" | "cancelled";
  readonly search: PuckSearchState | null;
  readonly workers: number;
  /** Why it cannot be started. */
  readonly problem: string | null;
}

export const noTradeoff: TradeoffBench = { status: "idle", search: null, workers: 0, problem: null };
