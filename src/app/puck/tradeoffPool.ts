import type { Evaluation } from "../../../shared/jobs/tradeoff/designSpace";
import type { OpenPoint } from "../../../shared/jobs/tradeoff/pointRun";
import { isFinished, nextPoints, recordAnswer, startTradeoff } from "../../../shared/jobs/tradeoff/tradeoffRun";
import { plannedSearch } from "../../../shared/jobs/tradeoff/tradeoffSearch";
import { problem, type Result, success } from "../../../shared/result";
import type { PuckApi } from "../../../workers/puckApi";
import { poolSize } from "../engine/sweepPool";
import { WatchedWorker } from "../engine/watchedWorker";
import { puckCaseOf } from "./puckBlock";
import type { PuckInputs } from "./puckInputs";
import { spawnPuckSolver } from "./spawnPuckSolver";
import { keepSearch } from "./tradeoffKeeping";
import { type PuckSearchState, type TradeoffBench, tradeoffBench } from "./tradeoffState";

const sightMilliseconds = 150;

let current: SearchRun | null = null;

/** Starts the trade-off of the inputs; one that still runs is cancelled. */
export function startSearch(inputs: PuckInputs): void {
  current?.cancel();
  const started = firstState(inputs);
  if (started.ok) current = new SearchRun(started.value);
  else tradeoffBench.patch({ problem: started.problem.message });
}

/** Goes on with a search that was paused, in this visit or in an earlier one. */
export function resumeSearch(): void {
  if (current?.isPaused) {
    current.resume();
    return;
  }
  const { status, search } = tradeoffBench.value;
  if (status === "paused" && search !== null) current = new SearchRun(search);
}

export function pauseSearch(): void {
  current?.pause();
}

export function cancelSearch(): void {
  if (current === null) tradeoffBench.patch({ status: "cancelled" });
  current?.cancel();
}

function firstState(inputs: PuckInputs): Result<PuckSearchState> {
  const theCase = puckCaseOf(inputs, []);
  if (!theCase.ok) return theCase;
  const planned = plannedSearch(theCase.value);
  if (!planned.ok) return planned;
  const { tradeoff } = theCase.value;
  if (tradeoff === null) return problem("tradeoff", "No trade-off was asked for.");
  const run = startTradeoff(tradeoff, planned.value.space);
  if (!run.ok) return run;
  return success({ inputs, theCase: theCase.value, run: run.value, allowed: [], refused: 0, reason: null, seconds: 0 });
}

/** One run: hands open points to its workers, gathers answers, and shows them a few times a second. */
class SearchRun {
  readonly #workers: readonly WatchedWorker<PuckApi>[];
  readonly #handedOut = new Set<number>();
  #state: PuckSearchState;
  #since: number | null = performance.now();
  #shownAt = 0;
  #status: TradeoffBench["status"] = "running";
  #wake: (() => void)[] = [];

  constructor(state: PuckSearchState) {
    this.#state = state;
    const size = poolSize(navigator.hardwareConcurrency ?? 2);
    this.#workers = Array.from({ length: size }, () => new WatchedWorker<PuckApi>(spawnPuckSolver, () => {}));
    this.#show(true);
    void Promise.all(this.#workers.map((worker) => this.#serve(worker))).then(() => this.#finish());
  }

  get isPaused(): boolean {
    return this.#status === "paused";
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
    for (const worker of this.#workers) worker.close();
    this.#wakeAll();
  }

  /** Stops the clock, shows what is known and keeps it in the browser. */
  #hold(status: "paused" | "cancelled" | "done"): void {
    this.#state = { ...this.#state, seconds: this.#seconds() };
    this.#since = null;
    this.#status = status;
    this.#show(true);
    keepSearch(status === "paused" ? this.#state : null);
  }

  async #serve(worker: WatchedWorker<PuckApi>): Promise<void> {
    while (this.#status !== "cancelled" && !isFinished(this.#state.run)) {
      const point = this.#status === "paused" ? undefined : this.#take();
      if (point === undefined) {
        await new Promise<void>((resolve) => this.#wake.push(resolve));
        continue;
      }
      const answer = await this.#evaluate(worker, point);
      if (answer === null) return;
      this.#record(point, answer);
    }
  }

  #take(): OpenPoint | undefined {
    const [point] = nextPoints(this.#state.run, 1, this.#handedOut);
    if (point !== undefined) this.#handedOut.add(point.index);
    return point;
  }

  /** null when the search was cancelled. A crashed worker is asked once more; then the point counts as impossible. */
  async #evaluate(worker: WatchedWorker<PuckApi>, { variables }: OpenPoint): Promise<Evaluation | null> {
    const { theCase, inputs } = this.#state;
    let reason = "the solver stopped on this puck";
    for (let attempt = 0; attempt < 2; attempt++) {
      const outcome = await worker.call((remote) => remote.evaluatePoint(theCase, variables));
      if (outcome.kind === "cancelled") return null;
      if (outcome.kind === "crashed") continue;
      if (outcome.value.ok) return outcome.value.value;
      reason = outcome.value.problem.message;
      break;
    }
    return { variables, goals: inputs.tradeoff.goals.map(() => 0), violation: 1e6, reason };
  }

  #record({ index }: OpenPoint, evaluation: Evaluation): void {
    // After a cancel the last answers of other workers no longer count: the state was told already.
    if (this.#status === "cancelled") return;
    this.#handedOut.delete(index);
    const before = this.#state;
    const isAllowed = evaluation.violation === 0;
    this.#state = {
      ...before,
      run: recordAnswer(before.run, index, evaluation),
      allowed: isAllowed ? [...before.allowed, evaluation] : before.allowed,
      refused: before.refused + (isAllowed ? 0 : 1),
      reason: isAllowed ? before.reason : evaluation.reason,
    };
    const { run } = this.#state;
    const isNewGeneration =
      run.kind === "paretoSearch" &&
      before.run.kind === "paretoSearch" &&
      run.search.generation > before.run.search.generation;
    if (isNewGeneration) keepSearch({ ...this.#state, seconds: this.#seconds() });
    this.#show(isNewGeneration);
    if (isNewGeneration || isFinished(run)) this.#wakeAll();
  }

  #finish(): void {
    if (this.#status === "cancelled") return;
    for (const worker of this.#workers) worker.close();
    this.#hold("done");
  }

  #seconds(): number {
    return this.#state.seconds + (this.#since === null ? 0 : (performance.now() - this.#since) / 1000);
  }

  #show(now: boolean): void {
    if (!now && performance.now() - this.#shownAt < sightMilliseconds) return;
    this.#shownAt = performance.now();
    tradeoffBench.value = {
      status: this.#status,
      search: { ...this.#state, seconds: this.#seconds() },
      workers: this.#workers.length,
      problem: null,
    };
  }

  #wakeAll(): void {
    const waiting = this.#wake;
    this.#wake = [];
    for (const go of waiting) go();
  }
}
