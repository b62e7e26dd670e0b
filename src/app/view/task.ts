import type { Problem } from "../../../shared/result";
import { Notifier } from "../store/notifier";
import { cancelledCode, initialTask, type TaskState, type TaskStep } from "./taskState";
import type { CallOutcome } from "./watchedWorker";

/** What a computation answers: a value, or everything that is wrong with its inputs. */
export type Answer<Result> =
  | { readonly ok: true; readonly value: Result }
  | { readonly ok: false; readonly problem: Problem }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** How a task is asked. */
export interface TaskOptions<Inputs, Result, Step> {
  /** Asks the question; the outcome is never a rejection. */
  readonly ask: (inputs: Inputs, onStep: (step: Step) => Promise<void>) => Promise<CallOutcome<Answer<Result>>>;
  /** Ends what is being asked, so that a newer question need not wait; without it a newer question waits for its turn. */
  readonly end?: () => void;
  /** Calls that may run at the same time where newer ones wait; 2 keeps a worker busy while its last answer is drawn. */
  readonly mostRunning?: number;
  /** Follows an answer before the next question is taken. @param isNewest false as soon as a newer question came */
  readonly after?: (inputs: Inputs, isNewest: () => boolean) => Promise<void>;
  /** What is said of a call whose worker stopped. */
  readonly crashWords: (reason: string) => string;
  /** What is said of a call that was cancelled. */
  readonly cancelWords?: string;
}

/**
 * A question to a worker of which only the newest asking counts. A newer one ends the one that runs, or waits and
 * replaces the one that waited; an answer never overwrites a newer one, whatever order they come in.
 */
export class Task<Inputs, Result, Step = TaskStep> extends Notifier<TaskState<Inputs, Result, Step>> {
  readonly #options: TaskOptions<Inputs, Result, Step>;
  #waiting: { readonly inputs: Inputs; readonly call: number } | null = null;
  #running = 0;
  /** Answers of calls below this number no longer count. */
  #answered = 0;

  constructor(options: TaskOptions<Inputs, Result, Step>) {
    super(initialTask);
    this.#options = options;
  }

  /** Asks with new inputs. Resolves when this call has been answered, was cancelled, or gave way to a newer one. */
  async run(inputs: Inputs): Promise<void> {
    if (this.#options.end !== undefined) this.cancel();
    const call = this.value.call + 1;
    this.patch({ status: "pending", call, inputs, step: null });
    if (this.#options.end !== undefined) return this.#ask(inputs, call);
    this.#waiting = { inputs, call };
    if (this.#running >= (this.#options.mostRunning ?? 1)) return;
    this.#running++;
    try {
      while (this.#waiting !== null) {
        const next: { readonly inputs: Inputs; readonly call: number } = this.#waiting;
        this.#waiting = null;
        await this.#ask(next.inputs, next.call);
        await this.#options.after?.(next.inputs, () => this.value.call === next.call);
      }
    } finally {
      this.#running--;
    }
  }

  /** Takes the last answer as one of other inputs, which it depends on just as little. */
  keepFor(inputs: Inputs): void {
    const { last } = this.value;
    if (last !== null) this.patch({ last: { ...last, inputs } });
  }

  /** Ends a pending call at once; its answer is dropped should it come. */
  cancel(): void {
    if (this.value.status !== "pending") return;
    this.#giveUp();
    this.#options.end?.();
  }

  /** The number moves on, so that neither a step nor an answer of the ended call counts any more. */
  #giveUp(): void {
    this.#waiting = null;
    this.#answered = this.value.call + 1;
    const message = this.#options.cancelWords ?? "Cancelled.";
    this.patch({ status: "error", call: this.#answered, step: null, problems: [{ code: cancelledCode, message }] });
  }

  async #ask(inputs: Inputs, call: number): Promise<void> {
    const isNewest = () => this.value.call === call && this.value.status === "pending";
    const outcome = await this.#options.ask(inputs, async (step) => {
      if (isNewest()) this.patch({ step });
    });
    if (outcome.kind === "cancelled") {
      // A worker that others share was ended by one of them.
      if (isNewest()) this.#giveUp();
      return;
    }
    if (outcome.kind === "done" && outcome.value.ok) {
      if (call < this.#answered) return;
      this.#answered = call;
      const last = { inputs, result: outcome.value.value };
      this.patch(isNewest() ? { status: "complete", step: null, last, problems: [] } : { last });
    } else if (isNewest()) {
      this.patch({ status: "error", step: null, problems: this.#problemsOf(outcome) });
    }
  }

  #problemsOf(outcome: Exclude<CallOutcome<Answer<Result>>, { kind: "cancelled" }>): readonly Problem[] {
    if (outcome.kind === "crashed") return [{ code: "crash", message: this.#options.crashWords(outcome.reason) }];
    if (outcome.value.ok) return [];
    return "problems" in outcome.value ? outcome.value.problems : [outcome.value.problem];
  }
}
