import { amend, type History, record } from "../store/history";
import { Bench, type BenchState } from "../view/bench";
import { initialTask } from "../view/taskState";
import { newTrial, type TrialInputs } from "./trialInputs";
import type { PowerTask, RankingTask } from "./trialTasks";

/** What the trial view works on and what is known of it. */
export interface TrialState extends BenchState<TrialInputs> {
  readonly ranking: RankingTask;
  readonly power: PowerTask;
  /** Id of the activity whose scores are typed and whose ranking is shown; null for the overall ranking. */
  readonly activity: number | null;
  /** The text of a table of scores that is being imported; kept until it is taken or cleared. */
  readonly importText: string;
}

class TrialBench extends Bench<TrialInputs, TrialState> {
  /** The cell that made the last step of the history: typing on in it is no further step. */
  #typed: { readonly key: string; readonly history: History<TrialInputs> } | null = null;

  /** What was typed into a cell, kept with every key. */
  typeScore(key: string, typed: string): void {
    const { history } = this.value;
    const { [key]: old, ...others } = history.present.cells;
    const isGone = typed === "" && (old?.comment ?? null) === null;
    const cell = { typed, position: old?.position ?? null, comment: old?.comment ?? null };
    const next = { ...history.present, cells: isGone ? others : { ...history.present.cells, [key]: cell } };
    const isSameCell = this.#typed?.key === key && this.#typed.history === history;
    this.put(isSameCell ? amend(history, next) : record(history, next));
    this.#typed = { key, history: this.value.history };
  }

  /** Shows another trial; what was found for the one before is no longer shown. */
  showTrial(inputs: TrialInputs): void {
    this.show(inputs, { activity: null, power: initialTask });
  }
}

export const trialBench = new TrialBench(newTrial, {
  ranking: initialTask,
  power: initialTask,
  activity: null,
  importText: "",
});
