import { type Design, designRequest } from "../../../shared/case/design";
import type { LiveDetail } from "../../../shared/engine/section/solveLive";
import { type Problem, type Result, success } from "../../../shared/result";
import type { LiveCurves, SolverApi } from "../../../workers/solverApi";
import type { CallOutcome, WatchedWorker } from "../view/watchedWorker";
import type { CurveRanges } from "./curveRanges";
import type { Solved } from "./solved";

/** Calls that a crash may end before the page stops repeating them. */
const mostRepeats = 2;

/** What is said when it has stopped repeating them. */
export function crashWords(): string {
  return "The solver stopped again and again on this design; change it to go on.";
}

/** Solves a design; a solver that crashed is asked again. */
export async function solveDesign(
  worker: WatchedWorker<SolverApi>,
  design: Design,
  detail: LiveDetail = "full",
): Promise<CallOutcome<Result<Solved>>> {
  const made = designRequest(design);
  if (!made.ok) return { kind: "done", value: made };
  const { request, fluid } = made.value;
  const outcome = await worker.insist((remote) => remote.solveNow(request, detail), mostRepeats);
  if (outcome.kind !== "done") return outcome;
  if (!outcome.value.ok) return { kind: "done", value: outcome.value };
  const solution = outcome.value.value;
  const isSolved = solution.outcome.rising !== null;
  return {
    kind: "done",
    value: isSolved
      ? success({ design, fluid, solution })
      : { ok: false, problem: solution.outcome.problem ?? noState },
  };
}

const noState: Problem = { code: "no-state", message: "No steady state was found for this condition." };

/** The curves of a design. */
export async function traceDesign(
  worker: WatchedWorker<SolverApi>,
  design: Design,
  { reynoldsNumbers, roughnessRatios, withBands }: CurveRanges,
): Promise<CallOutcome<Result<LiveCurves>>> {
  const made = designRequest(design);
  if (!made.ok) return { kind: "done", value: made };
  const { request } = made.value;
  return worker.insist(
    (remote) => remote.traceCurves(request, reynoldsNumbers, roughnessRatios, withBands),
    mostRepeats,
  );
}

/** The drag curve of a design as a sketch, the design's own point among its points. */
export async function sketchDesign(
  worker: WatchedWorker<SolverApi>,
  design: Design,
  reynoldsNumbers: readonly number[],
): Promise<CallOutcome<Result<LiveCurves["overReynolds"]>>> {
  const made = designRequest(design);
  if (!made.ok) return { kind: "done", value: made };
  const { request } = made.value;
  return worker.insist((remote) => remote.sketchCurve(request, reynoldsNumbers), mostRepeats);
}
