import type { Design } from "../../../shared/case/design";
import type { SolverApi } from "../../../workers/solverApi";
import { tell } from "../store/notices";
import { type Pin, presentDesign, updatePin, workbench } from "../store/workbench";
import { fullCurves, quickCurves } from "./curveRanges";
import { NewestOnly } from "./newestOnly";
import { solveDesign, traceDesign } from "./solveDesign";
import { spawnSolver } from "./spawnSolver";
import { WatchedWorker } from "./watchedWorker";

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
  const restarted = (reason: string) =>
    tell("warning", `The solver stopped (${reason}) and was started again. Nothing was lost.`);
  const pointWorker = new WatchedWorker<SolverApi>(spawnSolver, restarted);
  const curveWorker = new WatchedWorker<SolverApi>(spawnSolver, restarted);
  const points = new NewestOnly<SolveRequest>((request) => solvePoint(pointWorker, request), 2);
  const curves = new NewestOnly<SolveRequest>((request) => traceCurves(curveWorker, request));
  const standIn = presentDesign();
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
    points.submit({ design: last, isQuick: dragging });
    curves.submit({ design: last, isQuick: dragging });
  };
  workbench.subscribe(follow);
  const solveFirst = () => {
    if (last !== standIn) return;
    last = null;
    follow();
  };
  void firstScreen.then(solveFirst, solveFirst);
}

async function solvePoint(worker: WatchedWorker<SolverApi>, { design, isQuick }: SolveRequest): Promise<void> {
  const answer = await solveDesign(worker, design, isQuick ? "quick" : "full");
  if (answer === null) return;
  const isPresent = workbench.value.history.present === design;
  if (answer.ok) {
    workbench.patch({
      solved: { design, ...answer.value },
      problem: null,
      stale: !isPresent,
      solveCount: workbench.value.solveCount + 1,
    });
  } else if (isPresent) {
    workbench.patch({ problem: answer.problem, stale: true });
  }
}

async function traceCurves(worker: WatchedWorker<SolverApi>, { design, isQuick }: SolveRequest): Promise<void> {
  const curves = await traceDesign(worker, design, isQuick ? quickCurves : fullCurves);
  if (curves === null) return;
  workbench.patch({ curves, curvesStale: workbench.value.history.present !== design });
  if (isQuick) await new Promise((resolve) => setTimeout(resolve, curveRest));
}

async function solvePin(worker: WatchedWorker<SolverApi>, { id, design, solved }: Pin): Promise<void> {
  if (solved === null) {
    const answer = await solveDesign(worker, design);
    if (answer?.ok) updatePin(id, { solved: { design, ...answer.value } });
    else if (answer !== null) tell("warning", `A pinned design could not be solved: ${answer.problem.message}`);
  }
  const curves = await traceDesign(worker, design, fullCurves);
  if (curves !== null) updatePin(id, { curves });
}
