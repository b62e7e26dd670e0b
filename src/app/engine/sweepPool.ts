import type { Design } from "../../../shared/case/design";
import { designRequest } from "../../../shared/case/design";
import type { ResultRow } from "../../../shared/engine/section/resultRow";
import { problem, type Result } from "../../../shared/result";
import type { SolverApi } from "../../../workers/solverApi";
import { type Sweep, sweep } from "../store/sweep";
import { type SweepRange, type SweepTask, sweepInputs, sweepTasks } from "../store/sweepInputs";
import { spawnSolver } from "./spawnSolver";
import { WatchedWorker } from "./watchedWorker";

/** One worker fewer than the cores, so that the page stays free; at least one. */
export function poolSize(cores: number): number {
  return Math.max(1, Math.floor(cores) - 1);
}

const sightMilliseconds = 120;

let current: SweepRun | null = null;

/** Starts a sweep; one that still runs is cancelled. */
export function startSweep(design: Design, ranges: readonly SweepRange[]): void {
  current?.cancel();
  current = new SweepRun(design, ranges);
}

export function pauseSweep(): void {
  current?.pause();
}

export function resumeSweep(): void {
  current?.resume();
}

export function cancelSweep(): void {
  current?.cancel();
}

/** One run: hands tasks to its workers, gathers rows, and shows them a few times a second. */
class SweepRun {
  readonly #tasks: readonly SweepTask[];
  readonly #workers: readonly WatchedWorker<SolverApi>[];
  readonly #rows: (ResultRow | null)[][];
  readonly #problems = new Set<string>();
  #next = 0;
  #done = 0;
  #seconds = 0;
  #since: number | null = null;
  #shownAt = 0;
  #status: Sweep["status"] = "running";
  #wake: (() => void)[] = [];

  constructor(design: Design, ranges: readonly SweepRange[]) {
    this.#tasks = sweepTasks(design, ranges);
    this.#rows = Array.from({ length: ranges[0].count }, () =>
      Array.from({ length: ranges[1]?.count ?? 1 }, () => null),
    );
    const size = Math.min(poolSize(navigator.hardwareConcurrency ?? 2), this.#tasks.length);
    this.#workers = Array.from({ length: size }, () => new WatchedWorker<SolverApi>(spawnSolver, () => {}));
    const inputs = sweepInputs(design).filter((input) => ranges.some((range) => range.key === input.key));
    sweep.value = {
      status: "running",
      inputs: ranges.map((range) => inputs.find((input) => input.key === range.key)!),
      ranges,
      workers: size,
      total: this.#tasks.length,
      done: 0,
      seconds: 0,
      rows: this.#rows,
      problems: [],
    };
    this.#since = performance.now();
    void Promise.all(this.#workers.map((worker) => this.#serve(worker))).then(() => this.#finish());
  }

  pause(): void {
    if (this.#status !== "running") return;
    this.#status = "paused";
    this.#seconds = this.#elapsed();
    this.#since = null;
    this.#show(true);
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
    this.#seconds = this.#elapsed();
    this.#since = null;
    this.#status = "cancelled";
    this.#show(true);
    for (const worker of this.#workers) worker.close();
    this.#wakeAll();
  }

  async #serve(worker: WatchedWorker<SolverApi>): Promise<void> {
    for (;;) {
      if (this.#status === "paused") await new Promise<void>((resolve) => this.#wake.push(resolve));
      if (this.#status === "cancelled") return;
      if (this.#status === "paused") continue;
      const task = this.#tasks[this.#next++];
      if (task === undefined) return;
      const answer = await rowOf(worker, task.design);
      if (answer === null) return;
      const [i, j] = task.at;
      if (answer.ok) this.#rows[i][j] = answer.value.converged ? answer.value : null;
      if (!answer.ok) this.#problems.add(answer.problem.message);
      else if (answer.value.problem !== null && !answer.value.converged) this.#problems.add(answer.value.problem);
      this.#done++;
      this.#show(false);
    }
  }

  #finish(): void {
    if (this.#status === "cancelled") return;
    this.#seconds = this.#elapsed();
    this.#since = null;
    this.#status = "done";
    for (const worker of this.#workers) worker.close();
    this.#show(true);
  }

  #elapsed(): number {
    return this.#seconds + (this.#since === null ? 0 : (performance.now() - this.#since) / 1000);
  }

  #show(now: boolean): void {
    if (current !== null && current !== this) return;
    if (!now && performance.now() - this.#shownAt < sightMilliseconds) return;
    this.#shownAt = performance.now();
    sweep.patch({
      status: this.#status,
      done: this.#done,
      seconds: this.#elapsed(),
      rows: this.#rows.map((row) => [...row]),
      problems: [...this.#problems].slice(0, 20),
    });
  }

  #wakeAll(): void {
    const waiting = this.#wake;
    this.#wake = [];
    for (const go of waiting) go();
  }
}

/** The row of one design; null when the sweep was cancelled. A crashed worker is asked once more. */
async function rowOf(worker: WatchedWorker<SolverApi>, design: Design): Promise<Result<ResultRow> | null> {
  const made = designRequest(design);
  if (!made.ok) return made;
  for (let attempt = 0; attempt < 2; attempt++) {
    const outcome = await worker.call((remote) => remote.solveRow(made.value.request));
    if (outcome.kind === "cancelled") return null;
    if (outcome.kind === "done") return outcome.value;
  }
  return problem("crash", "The solver stopped on a point of the sweep.");
}
