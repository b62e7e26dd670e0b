import type { Problem } from "../../../shared/result";

/** How far a task is that can be counted. */
export interface TaskStep {
  readonly done: number;
  readonly total: number;
  /** What was done last. */
  readonly label: string;
}

/** What is known of a question that is asked again and again. Plain data. */
export interface TaskState<Inputs, Result, Step = TaskStep> {
  readonly status: "initial" | "pending" | "complete" | "error";
  /** Number of the newest call; 0 before the first. */
  readonly call: number;
  /** Inputs of the newest call. */
  readonly inputs: Inputs | null;
  /** The newest step of a pending call. */
  readonly step: Step | null;
  /** The last answer with the inputs that it belongs to; it stays while a newer one is pending or cannot be had. */
  readonly last: { readonly inputs: Inputs; readonly result: Result } | null;
  /** Why the last call that ended has no answer; empty when it has. They stay while a newer call is pending. */
  readonly problems: readonly Problem[];
}

/** Nothing asked yet. */
export const initialTask: TaskState<never, never, never> = {
  status: "initial",
  call: 0,
  inputs: null,
  step: null,
  last: null,
  problems: [],
};

/** Code of the problem that stands for a call that a person ended. */
export const cancelledCode = "cancelled";
