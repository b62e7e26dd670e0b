import { availableParallelism } from "node:os";
import { Piscina } from "piscina";

/**
 * Threads that work through tasks, one per core of the machine. A task whose thread fails, for want of memory or by an
 * error, is given to another thread once; when that fails too, the work ends with its error.
 */
export class ThreadPool<Task, Answer> {
  private readonly pool: Piscina<Task, Answer>;
  private readonly threads: number;

  /**
   * @param entry   a built file whose default export answers a task
   * @param shared  plain data that every thread finds as its workerData
   * @param threads 1 or more
   */
  constructor(entry: URL, shared: unknown, threads = availableParallelism()) {
    this.threads = threads;
    this.pool = new Piscina<Task, Answer>({
      filename: entry.href,
      workerData: shared,
      minThreads: threads,
      maxThreads: threads,
    });
    // A thread may fail while nothing is asked of the pool; an error that nobody listens to would end the program.
    this.pool.on("error", () => {});
  }

  /**
   * Hands out tasks until there are none and all answers are in; answers come in any order, and may open new tasks. Ends
   * at the first error or when the signal says so, with what is under way ended too.
   * @param next the next task, null when none is open now
   * @param done takes the answer to a task
   */
  workThrough<Own extends Task>(
    next: () => Own | null,
    done: (task: Own, answer: Answer) => void,
    signal?: AbortSignal,
  ): Promise<void> {
    const over = new AbortController();
    const stop = signal === undefined ? over.signal : AbortSignal.any([over.signal, signal]);
    const work = new Promise<void>((resolve, reject) => {
      let busy = 0;
      const fill = () => {
        while (busy < this.threads && !stop.aborted) {
          const task = next();
          if (task === null) break;
          busy++;
          this.answer(task, stop)
            .then((answer) => {
              busy--;
              if (stop.aborted) return;
              done(task, answer);
              fill();
            })
            .catch((error) => reject(stop.aborted ? stop.reason : error));
        }
        if (stop.aborted) reject(stop.reason);
        else if (busy === 0) resolve();
      };
      // Of a thread that has no task: it cannot start, and neither could those that take its place.
      this.pool.on("error", reject);
      over.signal.addEventListener("abort", () => this.pool.off("error", reject));
      fill();
    });
    return work.finally(() => over.abort());
  }

  /**
   * The answers to a list of tasks, in its order.
   * @param tasks all different
   */
  async answers(tasks: readonly Task[], onAnswer: (answered: number) => void, signal?: AbortSignal): Promise<Answer[]> {
    const open = tasks.values();
    const found = new Map<Task, Answer>();
    await this.workThrough(
      () => open.next().value ?? null,
      (task, answer) => {
        found.set(task, answer);
        onAnswer(found.size);
      },
      signal,
    );
    return tasks.flatMap((task) => found.get(task) ?? []);
  }

  private async answer(task: Task, signal: AbortSignal): Promise<Answer> {
    try {
      return await this.pool.run(task, { signal });
    } catch (error) {
      if (signal.aborted) throw error;
      return this.pool.run(task, { signal });
    }
  }

  /** Ends all threads at once, whatever they are at. */
  async end(): Promise<void> {
    await this.pool.destroy();
  }
}
