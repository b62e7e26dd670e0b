import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { TradeoffAnswer, TradeoffTask } from "./tradeoffMessages";

/** One thread fewer than the machine has cores, so that it stays usable; at least one. */
export function threadCount(): number {
  return Math.max(1, availableParallelism() - 1);
}

/**
 * Threads that work through tasks. Each asks for its next task when it is free, so that tasks may depend on earlier
 * answers; the order of the answers does not matter to the caller.
 */
export class TradeoffPool {
  private readonly threads: Worker[];
  private readonly ready: Promise<void>[];

  /** @param document the case, as plain data */
  constructor(document: unknown, threads: number) {
    this.threads = Array.from(
      { length: threads },
      () => new Worker(new URL("./tradeoffThread.js", import.meta.url), { workerData: document }),
    );
    this.ready = this.threads.map(async (thread) => {
      await nextAnswer(thread);
    });
  }

  /**
   * Hands out tasks until there are none and all answers are in.
   * @param next the next task, null when none is open now
   * @param done takes the answer to a task
   */
  async work<Task extends TradeoffTask>(
    next: () => Task | null,
    done: (task: Task, answer: TradeoffAnswer) => void,
  ): Promise<void> {
    const idle: (() => void)[] = [];
    let busy = 0;
    const wake = () => {
      for (const resume of idle.splice(0)) resume();
    };
    const serve = async (thread: Worker, ready: Promise<void>) => {
      await ready;
      for (;;) {
        const task = next();
        if (task === null) {
          if (busy === 0) return wake();
          // Another thread's answer may open new tasks.
          await new Promise<void>((resume) => {
            idle.push(resume);
          });
          continue;
        }
        busy++;
        thread.postMessage(task);
        const answer = await nextAnswer(thread);
        busy--;
        done(task, answer);
        wake();
      }
    };
    await Promise.all(this.threads.map((thread, i) => serve(thread, this.ready[i])));
  }

  /** Ends all threads at once, whatever they are at. */
  async end(): Promise<void> {
    await Promise.all(this.threads.map((thread) => thread.terminate()));
  }
}

function nextAnswer(thread: Worker): Promise<TradeoffAnswer> {
  return new Promise((resolve, reject) => {
    const clear = () => {
      thread.off("message", onMessage);
      thread.off("error", onError);
      thread.off("exit", onExit);
    };
    const onMessage = (answer: TradeoffAnswer) => {
      clear();
      resolve(answer);
    };
    const onError = (error: Error) => {
      clear();
      reject(error);
    };
    const onExit = () => {
      clear();
      reject(new Error("a thread of the trade-off ended before its answer"));
    };
    thread.on("message", onMessage);
    thread.on("error", onError);
    thread.on("exit", onExit);
  });
}
