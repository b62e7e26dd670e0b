import type { FlowCondition } from "../condition";
import type { SectionNodes } from "../geometry/sectionNodes";
import type { ConditionOutcome } from "../solution";
import type { JudgedDragBand } from "../trust/judgedDragBand";
import { type FlowPicture, flowPicture } from "./flowPicture";
import { type LiveFloor, liveFloor } from "./liveFloor";
import type { PreparedShape } from "./prepareShape";
import { solveStream } from "./solveStreams";
import type { Stream } from "./stream";

/** A complete solution of one section in one stream. Plain data with big arrays, made to be transferred. */
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

/** Solves one stream on a prepared shape, with all that a picture of it needs. */
export function solveLive(shape: PreparedShape, stream: Stream, detail: LiveDetail = "full"): LiveSolution {
  const { condition, outcome, bands } = solveStream(shape, stream, detail === "quick" ? "none" : "all");
  const { section, incidence, referenceWidth } = shape;
  const { rising } = outcome;
  return {
    nodes: section.nodes,
    incidence,
    referenceWidth,
    floor: liveFloor(section),
    condition,
    outcome,
    band: rising === null ? null : (bands[rising] ?? null),
    picture: rising === null ? null : flowPicture(section, outcome.states[rising], detail),
  };
}
