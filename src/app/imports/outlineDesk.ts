import type { ImportedOutline, OutlineQuestion } from "../../../shared/outlines/importOutline";
import { problem } from "../../../shared/result";
import type { OutlineApi } from "../../../workers/outlineApi";
import { Task } from "../view/task";
import type { WatchedWorker } from "../view/watchedWorker";

/** Longest that a file is read, ms: a hundred times what the largest outlines take (chosen). */
const deadline = 10_000;

/** Has outlines read in a worker of their own, which is started with the first, and ended when one takes too long. */
export class OutlineDesk {
  readonly task: Task<OutlineQuestion, ImportedOutline>;
  readonly #start: () => WatchedWorker<OutlineApi>;
  #worker: WatchedWorker<OutlineApi> | null = null;

  constructor(start: () => WatchedWorker<OutlineApi>) {
    this.#start = start;
    this.task = new Task<OutlineQuestion, ImportedOutline>({
      ask: (question) => this.#read(question),
      crashWords: (reason) => `The reader of outlines stopped (${reason}); try again, or another file.`,
      cancelWords: "Reading was cancelled.",
    });
  }

  cancel(): void {
    this.task.cancel();
    this.#worker?.cancel();
  }

  async #read(question: OutlineQuestion) {
    this.#worker ??= this.#start();
    const worker = this.#worker;
    let isLate = false;
    const timer = setTimeout(() => {
      isLate = true;
      worker.cancel();
    }, deadline);
    const outcome = await worker.call((remote) => remote.importOutline(question));
    clearTimeout(timer);
    if (!isLate || outcome.kind === "done") return outcome;
    const message = `Reading took longer than ${deadline / 1000} s and was ended; leave only the outline in the file.`;
    return { kind: "done", value: problem("deadline", message) } as const;
  }
}
