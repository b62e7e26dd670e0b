import { type Design, designRequest } from "../../../shared/case/design";
import type { ResultRow } from "../../../shared/engine/section/resultRow";
import type { Result } from "../../../shared/result";
import type { SolverApi } from "../../../workers/solverApi";
import type { CallOutcome, WatchedWorker } from "../view/watchedWorker";
import { WorkerPool } from "../view/workerPool";
import { solverWorker } from "../view/workers";
import { sweep } from "./sectionStores";
import { noSweep } from "./sweep";
import { type SweepRange, type SweepTask, sweepInputs, sweepTasks } from "./sweepInputs";

/** Messages that are kept of points without a result. */
const mostProblems = 20;

let current: WorkerPool<SolverApi, SweepTask, Result<ResultRow>> | null = null;

/** Starts a sweep; one that still runs is cancelled. */
export function startSweep(design: Design, ranges: readonly SweepRange[]): void {
  current?.cancel();
  const tasks = sweepTasks(design, ranges);
  const inputs = sweepInputs(design);
  const rows = Array.from({ length: ranges[0].count }, () =>
    Array.from({ length: ranges[1]?.count ?? 1 }, (): ResultRow | null => null),
  );
  const problems = new Set<string>();
  let next = 0;
  let done = 0;
  sweep.value = {
    ...noSweep,
    inputs: ranges.map((range) => inputs.find((input) => input.key === range.key)!),
    ranges,
    total: tasks.length,
  };
  current = new WorkerPool({
    newWorker: () => solverWorker(null),
    mostWorkers: tasks.length,
    isFinished: () => done === tasks.length,
    take: () => tasks[next++],
    ask: (worker, task) => rowOf(worker, task.design),
    record: ({ at: [i, j] }, outcome) => {
      done++;
      if (outcome.kind === "crashed") problems.add("The solver stopped on a point of the sweep.");
      else if (!outcome.value.ok) problems.add(outcome.value.problem.message);
      else if (outcome.value.value.converged) rows[i][j] = outcome.value.value;
      else if (outcome.value.value.problem !== null) problems.add(outcome.value.value.problem);
      return false;
    },
    show: (progress) =>
      sweep.patch({
        ...progress,
        done,
        rows: rows.map((row) => [...row]),
        problems: [...problems].slice(0, mostProblems),
      }),
  });
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

/** The row of one design. A crashed worker is asked once more. */
async function rowOf(worker: WatchedWorker<SolverApi>, design: Design): Promise<CallOutcome<Result<ResultRow>>> {
  const made = designRequest(design);
  if (!made.ok) return { kind: "done", value: made };
  return worker.insist((remote) => remote.solveRow(made.value.request), 1);
}
