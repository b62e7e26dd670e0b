import { type History, record, redo, startHistory, undo } from "../store/history";
import { Notifier } from "../store/notifier";
import { recordTyped } from "../store/typing";

/** What every view works on: a history of inputs, and beside it what is known of them. */
export interface BenchState<Inputs> {
  readonly history: History<Inputs>;
}

/** The store of one view. */
export class Bench<
  Inputs extends { readonly title: string },
  State extends BenchState<Inputs>,
> extends Notifier<State> {
  readonly #start: Inputs;
  readonly #rest: Omit<State, "history">;

  /**
   * @param start  what the view shows before anything is opened; it is no step to go back to
   * @param rest   what is known then
   */
  constructor(start: Inputs, rest: Omit<State, "history">) {
    super({ ...rest, history: startHistory(start) } as State);
    this.#start = start;
    this.#rest = rest;
  }

  get present(): Inputs {
    return this.value.history.present;
  }

  /** True until something is changed, opened or brought back. */
  get isUntouched(): boolean {
    return this.present === this.#start;
  }

  /** Changes the inputs as one step of the history. */
  change(change: Partial<Inputs>): void {
    this.put(recordTyped(this.value.history, { ...this.present, ...change }));
  }

  /** Shows other inputs as one step of the history. @param rest what goes with them, beside the inputs */
  show(inputs: Inputs, rest: Partial<Omit<State, "history">> = {}): void {
    if (this.isUntouched) this.value = { ...this.#rest, ...rest, history: startHistory(inputs) } as State;
    else this.value = { ...this.value, ...rest, history: record(this.value.history, inputs) };
  }

  undo(): void {
    this.put(undo(this.value.history));
  }

  redo(): void {
    this.put(redo(this.value.history));
  }

  /** Calls back when the present inputs are replaced, not when only their results came. */
  followInputs(changed: () => void): () => void {
    let last = this.present;
    return this.subscribe(({ history }) => {
      if (history.present === last) return;
      last = history.present;
      changed();
    });
  }

  protected put(history: History<Inputs>): void {
    if (history !== this.value.history) this.value = { ...this.value, history };
  }
}
