import { type Design, designRequest } from "../../../shared/design/design";
import type { Problem } from "../../../shared/result";
import type { SolverApi } from "../../../workers/solverApi";
import { tell } from "../store/notices";
import { workbench } from "../store/workbench";
import { curveReynoldsNumbers, curveRoughnessRatios } from "./curveRanges";
import { NewestOnly } from "./newestOnly";
import { spawnSolver } from "./spawnSolver";
import { WatchedWorker } from "./watchedWorker";

/** Calls that a crash may end before the page stops repeating them. */
const mostRepeats = 2;

/**
 * Keeps the workbench solved: every change of the design is solved in one worker and its curves are traced in another,
 * newest first, so that the curves never hold up the drawing.
 */
export function startLiveSolving(): void {
  const restarted = (reason: string) =>
    tell("warning", `The solver stopped (${reason}) and was started again. Nothing was lost.`);
  const pointWorker = new WatchedWorker<SolverApi>(spawnSolver, restarted);
  const curveWorker = new WatchedWorker<SolverApi>(spawnSolver, restarted);
  const points = new NewestOnly<Design>((design) => solvePoint(pointWorker, design));
  const curves = new NewestOnly<Design>((design) => traceCurves(curveWorker, design));
  let last: Design | null = null;
  const follow = () => {
    const { present } = workbench.value.history;
    if (present === last) return;
    last = present;
    workbench.patch({ stale: true, curvesStale: true });
    points.submit(present);
    curves.submit(present);
  };
  workbench.subscribe(follow);
  follow();
}

async function solvePoint(worker: WatchedWorker<SolverApi>, design: Design): Promise<void> {
  const made = designRequest(design);
  if (!made.ok) return refuse(design, made.problem);
  const { request, fluid } = made.value;
  for (let attempt = 0; attempt <= mostRepeats; attempt++) {
    const outcome = await worker.call((remote) => remote.solveNow(request));
    if (outcome.kind === "cancelled") return;
    if (outcome.kind === "crashed") continue;
    if (!outcome.value.ok) return refuse(design, outcome.value.problem);
    const solution = outcome.value.value;
    const missing: Problem | null =
      solution.outcome.rising === null
        ? (solution.outcome.problem ?? { code: "no-state", message: "No steady state was found for this condition." })
        : null;
    if (missing !== null) return refuse(design, missing);
    const { solveCount, history } = workbench.value;
    workbench.patch({
      solved: { design, fluid, solution },
      problem: null,
      stale: history.present !== design,
      solveCount: solveCount + 1,
    });
    return;
  }
  refuse(design, { code: "crash", message: "The solver stopped again and again on this design; change it to go on." });
}

/** Tells why the newest design has no solution; a refusal of an older one no longer matters. */
function refuse(design: Design, problem: Problem): void {
  if (workbench.value.history.present === design) workbench.patch({ problem, stale: true });
}

async function traceCurves(worker: WatchedWorker<SolverApi>, design: Design): Promise<void> {
  const made = designRequest(design);
  if (!made.ok) return;
  const { request } = made.value;
  for (let attempt = 0; attempt <= mostRepeats; attempt++) {
    const outcome = await worker.call((remote) =>
      remote.traceCurves(request, curveReynoldsNumbers, curveRoughnessRatios),
    );
    if (outcome.kind === "cancelled") return;
    if (outcome.kind === "crashed") continue;
    if (!outcome.value.ok) return;
    workbench.patch({
      curves: outcome.value.value,
      curvesStale: workbench.value.history.present !== design,
    });
    return;
  }
}
