import type { Lifeline } from "../../../workers/lifeline";
import type { CallOutcome, WatchedWorker } from "./watchedWorker";

/** One worker fewer than the cores, so that the page stays free; at least one. */
export function poolSize(cores: number): number {
  return Math.max(1, Math.floor(cores) - 1);
}

/** The pause between two looks at a run, ms. */
const sightMilliseconds = 120;

export interface PoolProgress {
  readonly status: "running" | "paused" | "done" | "cancelled";
  /** Seconds of work so far, pauses left out. */
  readonly seconds: number;
  readonly workers: number;
}

/** What a pool works on. Its workers call these in turn, never at the same time. */
export interface PoolWork<Api extends Lifeline, Job, Answer> {
  readonly newWorker: () => WatchedWorker<Api>;
  /** Workers that there is work for. */
  readonly mostWorkers?: number;
  /** Seconds that were worked before, in an earlier visit. */
  readonly secondsBefore?: number;
  readonly isFinished: () => boolean;
  /** The next job; undefined while all that can be done is being done. */
  readonly take: () => Job | undefined;
  readonly ask: (worker: WatchedWorker<Api>, job: Job) => Promise<CallOutcome<Answer>>;
  /** Takes in what became of a job. @returns true when that opens new jobs */
  readonly record: (job: Job, outcome: Exclude<CallOutcome<Answer>, { kind: "cancelled" }>) => boolean;
  /** Shows how far it is: a few times a second, and at every change of status. */
  readonly show: (progress: PoolProgress) => void;
}

/** One run of many jobs on a pool of workers, which can be paused and cancelled. */
export class WorkerPool<Api extends Lifeline, Job, Answer> {
  readonly #work: PoolWork<Api, Job, Answer>;
  readonly #workers: readonly WatchedWorker<Api>[];
  #status: PoolProgress["status"] = "running";
  #seconds: number;
  #since: number | null = performance.now();
  #shownAt = 0;
  #wake: (() => void)[] = [];

  constructor(work: PoolWork<Api, Job, Answer>) {
    this.#work = work;
    this.#seconds = work.secondsBefore ?? 0;
    const size = Math.min(poolSize(navigator.hardwareConcurrency ?? 2), work.mostWorkers ?? Number.POSITIVE_INFINITY);
    this.#workers = Array.from({ length: size }, work.newWorker);
    this.#show(true);
    void Promise.all(this.#workers.map((worker) => this.#serve(worker))).then(() => this.#finish());
  }

  get isPaused(): boolean {
    return this.#status === "paused";
  }

  get seconds(): number {
    return this.#seconds + (this.#since === null ? 0 : (performance.now() - this.#since) / 1000);
  }

  pause(): void {
    if (this.#status === "running") this.#hold("paused");
  }

  resume(): void {
    if (this.#status !== "paused") return;
    this.#status = "running";
    this.#since = performance.now();
    this.#show(true);
    this.#wakeAll();
  }

  cancel(): void {
    if (this.#status !== "running" && this.#status !== "paused") return;
    this.#hold("cancelled");
    this.#close();
  }

  async #serve(worker: WatchedWorker<Api>): Promise<void> {
    while (this.#status !== "cancelled" && !this.#work.isFinished()) {
      const job = this.#status === "paused" ? undefined : this.#work.take();
      if (job === undefined) {
        await new Promise<void>((resolve) => this.#wake.push(resolve));
        continue;
      }
      const outcome = await this.#work.ask(worker, job);
      // After a cancel the last answers no longer count: the end was told already.
      if (outcome.kind === "cancelled" || this.#isCancelled) return;
      const hasNews = this.#work.record(job, outcome);
      this.#show(hasNews);
      if (hasNews || this.#work.isFinished()) this.#wakeAll();
    }
  }

  get #isCancelled(): boolean {
    return this.#status === "cancelled";
  }

  #finish(): void {
    if (this.#isCancelled) return;
    this.#hold("done");
    this.#close();
  }

  /** Stops the clock and shows what is known. */
  #hold(status: "paused" | "cancelled" | "done"): void {
    this.#seconds = this.seconds;
    this.#since = null;
    this.#status = status;
    this.#show(true);
  }

  #close(): void {
    for (const worker of this.#workers) worker.close();
    this.#wakeAll();
  }

  #show(now: boolean): void {
    if (!now && performance.now() - this.#shownAt < sightMilliseconds) return;
    this.#shownAt = performance.now();
    this.#work.show({ status: this.#status, seconds: this.seconds, workers: this.#workers.length });
  }

  #wakeAll(): void {
    const waiting = this.#wake;
    this.#wake = [];
    for (const go of waiting) go();
  }
}
