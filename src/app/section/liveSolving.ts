import type { Design } from "../../../shared/case/design";
import type { LiveCurves, SolverApi } from "../../../workers/solverApi";
import { tell } from "../store/notices";
import { Task } from "../view/task";
import type { WatchedWorker } from "../view/watchedWorker";
import { solverWorker } from "../view/workers";
import { fullCurves, sketchReynolds } from "./curveRanges";
import { deskTools } from "./deskTools";
import { touchedInput } from "./ribbonRange";
import { RibbonSolving } from "./ribbonSolving";
import { ownFlow, shownFlow } from "./shownFlow";
import { crashWords, sketchDesign, solveDesign, traceDesign } from "./solveDesign";
import type { Pin, Solved } from "./solved";
import { sweepInputs } from "./sweepInputs";
import { updatePin, workbench } from "./workbench";

/** Rest between two sketches of the curve while a handle is held, ms: the cores are left to the solution and its drawing. */
const sketchRest = 40;
/** The whole curve waits so long for another change, ms. */
const patience = 120;

interface SolveRequest {
  readonly design: Design;
  /** True while a handle is held. */
  readonly isQuick: boolean;
}

/**
 * Keeps the workbench solved: every change of the design is solved in one worker, its curve is sketched and its ribbon
 * followed in a second, and the whole curves are traced in a third once the hand rests; newest first, so that none holds
 * up the drawing. Pins that came without results are solved as well.
 * @param firstScreen  settles when the first screen was read; the design that stands in for it until then is not solved,
 *                     or its figures would show for a moment and undo would go back to it
 */
export function startLiveSolving(firstScreen: Promise<void>): void {
  const points = pointTask(solverWorker("The solver"));
  let later: Later | null = null;
  const standIn = workbench.present;
  let last: Design | null = standIn;
  let wasDragging = false;
  const follow = () => {
    const { history, dragging, solved, problem } = workbench.value;
    const { present } = history;
    // The first figures have the cores to themselves.
    if (later === null && (solved !== null || problem !== null)) {
      later = startLater();
      later.follow(present, dragging);
    }
    later?.solvePins();
    const dragEnded = wasDragging && !dragging;
    wasDragging = dragging;
    const isNew = present !== last;
    if (!isNew && !dragEnded) return;
    if (isNew) {
      const touched = last === null ? null : touchedInput(last, present, sweepInputs(present));
      last = present;
      workbench.patch({ stale: true, curvesStale: true });
      if (shownFlow.value !== ownFlow) shownFlow.value = ownFlow;
      if (touched !== null && touched !== deskTools.value.ribbonKey) deskTools.patch({ ribbonKey: touched });
    }
    void points.run({ design: present, isQuick: dragging });
    later?.follow(present, dragging);
  };
  workbench.subscribe(follow);
  let { ribbonKey } = deskTools.value;
  deskTools.subscribe((tools) => {
    if (tools.ribbonKey === ribbonKey) return;
    ribbonKey = tools.ribbonKey;
    later?.followRibbon(workbench.present, workbench.value.dragging);
  });
  shownFlow.subscribe(({ key, solved }) => {
    if (key !== "own" && solved === null) later?.solveOther();
  });
  const solveFirst = () => {
    if (last !== standIn) return;
    last = null;
    follow();
  };
  void firstScreen.then(solveFirst, solveFirst);
}

interface Later {
  readonly follow: (design: Design, isMoving: boolean) => void;
  readonly followRibbon: (design: Design, isMoving: boolean) => void;
  readonly solvePins: () => void;
  readonly solveOther: () => void;
}

/** What follows the first figures. */
function startLater(): Later {
  const quickWorker = solverWorker("The solver");
  const wholeWorker = solverWorker("The solver");
  const sketches = sketchTask(quickWorker);
  const curves = curveTask(wholeWorker);
  const ribbons = new RibbonSolving(quickWorker);
  const begun = new Set<Design>();
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const followRibbon = (design: Design, isMoving: boolean) => {
    const inputs = sweepInputs(design);
    const { ribbonKey } = deskTools.value;
    const key = inputs.some((one) => one.key === ribbonKey) ? ribbonKey : inputs[0].key;
    void ribbons.follow(design, key, isMoving);
  };
  return {
    followRibbon,
    follow: (design, isMoving) => {
      void sketches.run({ design, isQuick: isMoving });
      followRibbon(design, isMoving);
      clearTimeout(waiting);
      if (!isMoving) waiting = setTimeout(() => void curves.run({ design, isQuick: false }), patience);
    },
    solvePins: () => {
      for (const pin of workbench.value.pins) {
        if (begun.has(pin.design) || (pin.solved !== null && pin.curves !== null)) continue;
        begun.add(pin.design);
        void solvePin(wholeWorker, pin);
      }
    },
    solveOther: () => {
      const { key } = shownFlow.value;
      const design = shownFlow.value.design;
      if (design === undefined) return;
      void solveDesign(quickWorker, design).then((outcome) => {
        if (shownFlow.value.key !== key || shownFlow.value.design !== design) return;
        if (outcome.kind === "done" && outcome.value.ok) shownFlow.patch({ solved: outcome.value.value });
        else shownFlow.value = ownFlow;
      });
    },
  };
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

/** Sketches keep the roughness curve of the last whole trace. */
function sketchTask(worker: WatchedWorker<SolverApi>): Task<SolveRequest, LiveCurves["overReynolds"]> {
  const task = new Task<SolveRequest, LiveCurves["overReynolds"]>({
    ask: ({ design }) => sketchDesign(worker, design, sketchReynolds(workbench.value.curves)),
    after: async ({ isQuick }) => {
      if (isQuick) await new Promise((resolve) => setTimeout(resolve, sketchRest));
    },
    crashWords,
  });
  let shown = task.value.last;
  task.subscribe(({ last }) => {
    if (last === null || last === shown) return;
    shown = last;
    const { curves, curvesStale } = workbench.value;
    if (!curvesStale) return;
    workbench.patch({ curves: { overReynolds: last.result, overRoughness: curves?.overRoughness ?? [] } });
  });
  return task;
}

function curveTask(worker: WatchedWorker<SolverApi>): Task<SolveRequest, LiveCurves> {
  const task = new Task<SolveRequest, LiveCurves>({
    ask: ({ design }) => traceDesign(worker, design, fullCurves),
    crashWords,
  });
  let shown = task.value.last;
  task.subscribe(({ last }) => {
    if (last === null || last === shown) return;
    shown = last;
    if (workbench.present === last.inputs.design) workbench.patch({ curves: last.result, curvesStale: false });
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
