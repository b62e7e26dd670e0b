import type { Evaluation } from "../../../shared/jobs/tradeoff/designSpace";
import type { OpenPoint } from "../../../shared/jobs/tradeoff/pointRun";
import { isFinished, nextPoints, recordAnswer, startTradeoff } from "../../../shared/jobs/tradeoff/tradeoffRun";
import { plannedSearch } from "../../../shared/jobs/tradeoff/tradeoffSearch";
import { problem, type Result, success } from "../../../shared/result";
import type { PuckApi } from "../../../workers/puckApi";
import { WorkerPool } from "../view/workerPool";
import { puckWorker } from "../view/workers";
import { tradeoffBench } from "./puckBench";
import { puckCaseOf } from "./puckBlock";
import type { PuckInputs } from "./puckInputs";
import { keepSearch } from "./tradeoffKeeping";
import type { PuckSearchState } from "./tradeoffState";

let current: WorkerPool<PuckApi, OpenPoint, Result<Evaluation>> | null = null;

/** Starts the trade-off of the inputs; one that still runs is cancelled. */
export function startSearch(inputs: PuckInputs): void {
  current?.cancel();
  const started = firstState(inputs);
  if (started.ok) current = searchRun(started.value);
  else tradeoffBench.patch({ problem: started.problem.message });
}

/** Goes on with a search that was paused, in this visit or in an earlier one. */
export function resumeSearch(): void {
  if (current?.isPaused) {
    current.resume();
    return;
  }
  const { status, search } = tradeoffBench.value;
  if (status === "paused" && search !== null) current = searchRun(search);
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

/** A run on a pool of workers, kept in the browser with every generation and while it is paused. */
function searchRun(start: PuckSearchState): WorkerPool<PuckApi, OpenPoint, Result<Evaluation>> {
  const handedOut = new Set<number>();
  let state = start;
  const pool = new WorkerPool<PuckApi, OpenPoint, Result<Evaluation>>({
    newWorker: () => puckWorker(null),
    secondsBefore: start.seconds,
    isFinished: () => isFinished(state.run),
    take: () => {
      const [point] = nextPoints(state.run, 1, handedOut);
      if (point !== undefined) handedOut.add(point.index);
      return point;
    },
    // A crashed worker is asked once more; then the point counts as impossible.
    ask: (worker, { variables }) => worker.insist((remote) => remote.evaluatePoint(start.theCase, variables), 1),
    record: ({ index, variables }, outcome) => {
      handedOut.delete(index);
      const answer = outcome.kind === "done" ? outcome.value : problem("crash", "the solver stopped on this puck");
      const goals = start.inputs.tradeoff.goals.map(() => 0);
      const before = state.run;
      state = withAnswer(
        state,
        index,
        answer.ok ? answer.value : { variables, goals, violation: 1e6, reason: answer.problem.message },
      );
      const { run } = state;
      const isNewGeneration =
        run.kind === "paretoSearch" &&
        before.kind === "paretoSearch" &&
        run.search.generation > before.search.generation;
      if (isNewGeneration) keepSearch({ ...state, seconds: pool.seconds });
      return isNewGeneration;
    },
    show: ({ status, seconds, workers }) => {
      const search = { ...state, seconds };
      tradeoffBench.value = { status, search, workers, problem: null };
      if (status !== "running") keepSearch(status === "paused" ? search : null);
    },
  });
  return pool;
}

function withAnswer(state: PuckSearchState, index: number, evaluation: Evaluation): PuckSearchState {
  const isAllowed = evaluation.violation === 0;
  return {
    ...state,
    run: recordAnswer(state.run, index, evaluation),
    allowed: isAllowed ? [...state.allowed, evaluation] : state.allowed,
    refused: state.refused + (isAllowed ? 0 : 1),
    reason: isAllowed ? state.reason : evaluation.reason,
  };
}
