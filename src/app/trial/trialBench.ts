import type { PowerResult, TrialResult } from "../../../shared/jobs/trial/trialResult";
import type { Problem } from "../../../shared/result";
import { amend, type History, record, redo, startHistory, undo } from "../store/history";
import { Notifier } from "../store/notifier";
import { recordTyped } from "../store/typing";
import { newTrial, type TrialInputs } from "./trialInputs";

/** What is known of the trial; it belongs to the inputs that it names, which may be older than the present ones. */
export interface TrialAnswer {
  readonly inputs: TrialInputs;
  readonly result: TrialResult;
}

/** A study of power that was asked for. */
export type PowerRun =
  | { readonly status: "running"; readonly done: number; readonly total: number; readonly label: string }
  | { readonly status: "done"; readonly inputs: TrialInputs; readonly result: PowerResult }
  | { readonly status: "cancelled" | "failed"; readonly message: string };

export interface TrialBench {
  readonly history: History<TrialInputs>;
  readonly answer: TrialAnswer | null;
  /** Why the present inputs have no answer; empty when they have or are being worked on. */
  readonly problems: readonly Problem[];
  readonly isWorking: boolean;
  readonly power: PowerRun | null;
  /** Id of the activity whose scores are typed and whose ranking is shown; null for the overall ranking. */
  readonly activity: number | null;
}

export const trialBench = new Notifier<TrialBench>({
  history: startHistory(newTrial),
  answer: null,
  problems: [],
  isWorking: false,
  power: null,
  activity: null,
});

export function presentTrial(): TrialInputs {
  return trialBench.value.history.present;
}

/** The cell that the last step of the history belongs to: typing on in it is no further step. */
let lastCell: string | null = null;

/** Changes the inputs as one step of the history. */
export function changeTrial(change: Partial<TrialInputs>): void {
  lastCell = null;
  const { history } = trialBench.value;
  trialBench.patch({ history: recordTyped(history, { ...history.present, ...change }) });
}

/** What was typed into a cell, kept with every key. */
export function typeScore(key: string, typed: string): void {
  const { history } = trialBench.value;
  const { [key]: old, ...others } = history.present.cells;
  const isGone = typed === "" && (old?.comment ?? null) === null;
  const cell = { typed, position: old?.position ?? null, comment: old?.comment ?? null };
  const next = { ...history.present, cells: isGone ? others : { ...history.present.cells, [key]: cell } };
  trialBench.patch({ history: lastCell === key ? amend(history, next) : record(history, next) });
  lastCell = key;
}

export function undoTrial(): void {
  lastCell = null;
  trialBench.patch({ history: undo(trialBench.value.history) });
}

export function redoTrial(): void {
  lastCell = null;
  trialBench.patch({ history: redo(trialBench.value.history) });
}

/** Shows other inputs, as one step of the history; the untouched start is no step to go back to. */
export function showTrial(inputs: TrialInputs): void {
  lastCell = null;
  const { history } = trialBench.value;
  const isFirst = history.present === newTrial;
  trialBench.patch({
    history: isFirst ? startHistory(inputs) : record(history, inputs),
    activity: null,
    power: null,
  });
}
