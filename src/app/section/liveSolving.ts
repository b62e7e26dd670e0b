import type { Design } from "../../../shared/case/design";
import type { LiveCurves, SolverApi } from "../../../workers/solverApi";
import { tell } from "../store/notices";
import { Task } from "../view/task";
import type { WatchedWorker } from "../view/watchedWorker";
import { solverWorker } from "../view/workers";
import { fullCurves, quickCurves } from "./curveRanges";
import { crashWords, solveDesign, traceDesign } from "./solveDesign";
import type { Pin, Solved } from "./solved";
import { updatePin, workbench } from "./workbench";

/** Rest between two traces of the curves while a handle is held, ms: the cores are left to the solution and its drawing. */
const curveRest = 220;

interface SolveRequest {
  readonly design: Design;
  /** True while a handle is held. */
  readonly isQuick: boolean;
}

/**
 * Keeps the workbench solved: every change of the design is solved in one worker and its curves are traced in another,
 * newest first, so that the curves never hold up the drawing. Pins that came without results are solved as well.
 * @param firstScreen  settles when the first screen was read; the design that stands in for it until then is not solved,
 *                     or its figures would show for a moment and undo would go back to it
 */
export function startLiveSolving(firstScreen: Promise<void>): void {
  const curveWorker = solverWorker("The solver");
  const points = pointTask(solverWorker("The solver"));
  const curves = curveTask(curveWorker);
  const standIn = workbench.present;
  let last: Design | null = standIn;
  let wasDragging = false;
  const begun = new Set<Design>();
  const follow = () => {
    const { history, pins, dragging } = workbench.value;
    for (const pin of pins) {
      if (begun.has(pin.design) || (pin.solved !== null && pin.curves !== null)) continue;
      begun.add(pin.design);
      void solvePin(curveWorker, pin);
    }
    const dragEnded = wasDragging && !dragging;
    wasDragging = dragging;
    const isNew = history.present !== last;
    if (!isNew && !dragEnded) return;
    last = history.present;
    if (isNew) workbench.patch({ stale: true, curvesStale: true });
    void points.run({ design: last, isQuick: dragging });
    void curves.run({ design: last, isQuick: dragging });
  };
  workbench.subscribe(follow);
  const solveFirst = () => {
    if (last !== standIn) return;
    last = null;
    follow();
  };
  void firstScreen.then(solveFirst, solveFirst);
}

function pointTask(worker: WatchedWorker<SolverApi>): Task<SolveRequest, Solved> {
  const task = new Task<SolveRequest, Solved>({
    ask: ({ design, isQuick }) => solveDesign(worker, design, isQuick ? "quick" : "full"),
    mostRunning: 2,
    crashWords,
  });
  let shown = task.value.last;
  task.subscribe(({ status, last, problems, inputs }) => {
    const { present } = workbench;
    if (last !== null && last !== shown) {
      shown = last;
      const solved = last.result;
      const solveCount = workbench.value.solveCount + 1;
      workbench.patch({ solved, problem: null, stale: solved.design !== present, solveCount });
    } else if (status === "error" && inputs?.design === present) {
      workbench.patch({ problem: problems[0], stale: true });
    }
  });
  return task;
}

function curveTask(worker: WatchedWorker<SolverApi>): Task<SolveRequest, LiveCurves> {
  const task = new Task<SolveRequest, LiveCurves>({
    ask: ({ design, isQuick }) => traceDesign(worker, design, isQuick ? quickCurves : fullCurves),
    after: async ({ isQuick }) => {
      if (isQuick) await new Promise((resolve) => setTimeout(resolve, curveRest));
    },
    crashWords,
  });
  let shown = task.value.last;
  task.subscribe(({ last }) => {
    if (last === null || last === shown) return;
    shown = last;
    workbench.patch({ curves: last.result, curvesStale: workbench.present !== last.inputs.design });
  });
  return task;
}

async function solvePin(worker: WatchedWorker<SolverApi>, { id, design, solved }: Pin): Promise<void> {
  if (solved === null) {
    const outcome = await solveDesign(worker, design);
    const answer = outcome.kind === "crashed" ? { ok: false as const, problem: { message: crashWords() } } : null;
    const reading = outcome.kind === "done" ? outcome.value : answer;
    if (reading?.ok) updatePin(id, { solved: reading.value });
    else if (reading !== null) tell("warning", `A pinned design could not be solved: ${reading.problem.message}`);
  }
  const curves = await traceDesign(worker, design, fullCurves);
  if (curves.kind === "done" && curves.value.ok) updatePin(id, { curves: curves.value.value });
}
