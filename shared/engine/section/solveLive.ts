import type { FlowCondition } from "../condition";
import type { SectionNodes } from "../geometry/sectionNodes";
import type { ConditionOutcome } from "../solution";
import { solveCondition } from "../solve/solveCondition";
import { curveBands } from "../trust/curveBands";
import type { JudgedDragBand } from "../trust/dragBand";
import { type FlowPicture, flowPicture } from "./flowPicture";
import { liveCondition } from "./liveCondition";
import { type LiveFloor, liveFloor } from "./liveFloor";
import type { LiveRequest } from "./liveRequest";
import type { LiveShape } from "./liveShape";

/** A complete solution of one request. Plain data with big arrays, made to be transferred. */
export interface LiveSolution {
  readonly nodes: SectionNodes;
  /** rad */
  readonly incidence: number;
  /** D, m. */
  readonly referenceWidth: number;
  /** null in an unbounded stream. */
  readonly floor: LiveFloor | null;
  readonly condition: FlowCondition;
  readonly outcome: ConditionOutcome;
  /** How far the drag coefficient on the rising branch can be trusted; null in a quick look or when nothing converged. */
  readonly band: JudgedDragBand | null;
  /** Of the state on the rising branch; null when nothing converged. */
  readonly picture: FlowPicture | null;
}

/** "quick" leaves out the band, which needs the states at nearby Reynolds numbers, and draws fewer lines: for a handle on the move. */
export type LiveDetail = "full" | "quick";

/** Solves one request on its prepared shape. */
export function solveLive(shape: LiveShape, request: LiveRequest, detail: LiveDetail = "full"): LiveSolution {
  const condition = liveCondition(request, shape.width);
  const outcome = solveCondition(shape.prepared, condition);
  const state = outcome.rising === null ? null : outcome.states[outcome.rising];
  return {
    nodes: shape.nodes,
    incidence: request.incidence,
    referenceWidth: shape.width,
    floor: liveFloor(shape.prepared),
    condition,
    outcome,
    band:
      outcome.rising === null || detail === "quick"
        ? null
        : curveBands(shape.prepared, [condition], [outcome])[0][outcome.rising],
    picture: state === null ? null : flowPicture(shape.prepared, state, detail),
  };
}
