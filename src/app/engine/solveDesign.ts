import { type Design, designRequest } from "../../../shared/case/design";
import type { FluidProperties } from "../../../shared/engine/fluid/fluidSpec";
import type { LiveDetail, LiveSolution } from "../../../shared/engine/section/solveLive";
import { type Problem, problem, type Result, success } from "../../../shared/result";
import type { LiveCurves, SolverApi } from "../../../workers/solverApi";
import type { CurveRanges } from "./curveRanges";
import type { WatchedWorker } from "./watchedWorker";

/** Calls that a crash may end before the page stops repeating them. */
const mostRepeats = 2;

export interface SolvedRequest {
  readonly fluid: FluidProperties;
  readonly solution: LiveSolution;
}

/** Solves a design; a solver that crashed is asked again. null when the call was cancelled. */
export async function solveDesign(
  worker: WatchedWorker<SolverApi>,
  design: Design,
  detail: LiveDetail = "full",
): Promise<Result<SolvedRequest> | null> {
  const made = designRequest(design);
  if (!made.ok) return made;
  const { request, fluid } = made.value;
  for (let attempt = 0; attempt <= mostRepeats; attempt++) {
    const outcome = await worker.call((remote) => remote.solveNow(request, detail));
    if (outcome.kind === "cancelled") return null;
    if (outcome.kind === "crashed") continue;
    if (!outcome.value.ok) return outcome.value;
    const solution = outcome.value.value;
    if (solution.outcome.rising === null) return { ok: false, problem: solution.outcome.problem ?? noState };
    return success({ fluid, solution });
  }
  return problem("crash", "The solver stopped again and again on this design; change it to go on.");
}

const noState: Problem = { code: "no-state", message: "No steady state was found for this condition." };

/** The curves of a design; null when it has none or the call was cancelled. */
export async function traceDesign(
  worker: WatchedWorker<SolverApi>,
  design: Design,
  ranges: CurveRanges,
): Promise<LiveCurves | null> {
  const made = designRequest(design);
  if (!made.ok) return null;
  const { request } = made.value;
  for (let attempt = 0; attempt <= mostRepeats; attempt++) {
    const outcome = await worker.call((remote) =>
      remote.traceCurves(request, ranges.reynoldsNumbers, ranges.roughnessRatios, ranges.withBands),
    );
    if (outcome.kind === "cancelled") return null;
    if (outcome.kind === "done") return outcome.value.ok ? outcome.value.value : null;
  }
  return null;
}
