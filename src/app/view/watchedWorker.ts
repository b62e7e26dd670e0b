import { type Remote, releaseProxy, wrap } from "comlink";
import type { Lifeline } from "../../../workers/lifeline";

/** How a call to a worker ended. A problem of the computation itself is part of the value. */
export type CallOutcome<T> =
  | { readonly kind: "done"; readonly value: T }
  | { readonly kind: "cancelled" }
  | { readonly kind: "crashed"; readonly reason: string };

interface Running<Api> {
  readonly remote: Remote<Api>;
  /** Calls that wait for an answer: each is told when the worker goes. */
  readonly waiting: Set<(outcome: CallOutcome<never>) => void>;
  readonly end: (outcome: CallOutcome<never>) => void;
}

const mostFailedStarts = 3;

/**
 * A worker that is started at once, watched, and started again after a crash or a cancelled call.
 * Comlink cannot cancel: a running call is ended by ending its worker, and a fresh one warms up meanwhile.
 */
export class WatchedWorker<Api extends Lifeline> {
  readonly #spawn: () => Worker;
  readonly #onCrash: (reason: string, isStartedAgain: boolean) => void;
  #running: Running<Api> | null;
  #failedStarts = 0;

  /** @param onCrash told why the worker stopped, and whether another one was started: after several failed starts none is */
  constructor(spawn: () => Worker, onCrash: (reason: string, isStartedAgain: boolean) => void) {
    this.#spawn = spawn;
    this.#onCrash = onCrash;
    this.#running = this.#start();
  }

  /** Runs one call. Never rejects: a crash or a cancel is an outcome. */
  call<Answer extends Promise<unknown>>(use: (remote: Remote<Api>) => Answer): Promise<CallOutcome<Awaited<Answer>>> {
    const running = this.#running;
    if (running === null) return Promise.resolve({ kind: "crashed", reason: "the solver cannot be started" });
    return new Promise((resolve) => {
      running.waiting.add(resolve);
      const settle = (outcome: CallOutcome<Awaited<Answer>>) => {
        running.waiting.delete(resolve);
        resolve(outcome);
      };
      use(running.remote).then(
        (value) => settle({ kind: "done", value: value as Awaited<Answer> }),
        (error: unknown) => settle({ kind: "crashed", reason: error instanceof Error ? error.message : String(error) }),
      );
    });
  }

  /** Runs one call, and runs it again when the worker stops during it. @param mostRepeats calls beyond the first */
  async insist<Answer extends Promise<unknown>>(
    use: (remote: Remote<Api>) => Answer,
    mostRepeats: number,
  ): Promise<CallOutcome<Awaited<Answer>>> {
    for (let repeat = 0; ; repeat++) {
      const outcome = await this.call(use);
      if (outcome.kind !== "crashed" || repeat >= mostRepeats) return outcome;
    }
  }

  get isBusy(): boolean {
    return this.#running !== null && this.#running.waiting.size > 0;
  }

  /** Ends every running call as cancelled and starts a fresh worker. */
  cancel(): void {
    const old = this.#running;
    this.#running = this.#start();
    old?.end({ kind: "cancelled" });
  }

  close(): void {
    this.#running?.end({ kind: "cancelled" });
    this.#running = null;
  }

  #start(): Running<Api> {
    const worker = this.#spawn();
    const remote = wrap<Api>(worker);
    const waiting: Running<Api>["waiting"] = new Set();
    let hasLived = false;
    const withdrawn = new AbortController();
    const end = (outcome: CallOutcome<never>) => {
      if (withdrawn.signal.aborted) return;
      withdrawn.abort();
      worker.terminate();
      for (const settle of [...waiting]) settle(outcome);
      waiting.clear();
      remote[releaseProxy]();
    };
    const running: Running<Api> = { remote, waiting, end };
    const crash = (reason: string) => {
      if (withdrawn.signal.aborted) return;
      this.#failedStarts++;
      if (this.#running === running) this.#running = this.#failedStarts < mostFailedStarts ? this.#start() : null;
      end({ kind: "crashed", reason });
      // A start that failed is tried again in silence: until the last one nothing has stopped for anybody.
      if (hasLived || this.#running === null) this.#onCrash(reason, this.#running !== null);
    };
    worker.addEventListener("error", (event) => crash(event.message || "its program could not be loaded"));
    const lived = () => {
      hasLived = true;
    };
    void this.#watch(remote, withdrawn.signal, lived).then((died) => {
      if (died) crash("it ended without a word");
    });
    return running;
  }

  /** Resolves with true when the worker has died, with false when watching is impossible or was withdrawn. */
  async #watch(remote: Remote<Lifeline>, withdrawn: AbortSignal, lived: () => void): Promise<boolean> {
    const lockName = `wakewright-worker-${performance.timeOrigin}-${Math.random()}`;
    try {
      const held = await remote.holdLifeline(lockName);
      this.#failedStarts = 0;
      lived();
      if (!held) return false;
      return await navigator.locks.request(lockName, { signal: withdrawn }, () => true);
    } catch {
      return false;
    }
  }
}
