import type { BaseBand } from "./baseBand";
import type { ForceParts } from "./wakeRow";

export type RimState = "laminar" | "turned";
/** The edge's layer stays on it or comes back at once, comes back on the face behind a long bubble, or does not. */
export type EdgeState = "kept" | "lost" | "open";

/** One way in which the flow can pass a body, before it is known how often it does. */
export interface FlowBranch {
  readonly rimState: RimState;
  /** Azimuth from the front, rad; null where the flow does not reach the rim. */
  readonly rimSeparation: number | null;
  /** Over k. */
  readonly nodes: readonly ForceParts[];
  readonly base: BaseBand;
  /** Friction drag over dynamic pressure and frontal area. */
  readonly friction: number;
  /** Cp that a lost front is capped at. */
  readonly suctionCap: number;
  /** False where the wake does not settle: the rim's separation lies too far back. */
  readonly settled: boolean;
}

/** A rim with its edge kept or lost, and the same with the flow open from the edge. */
export interface RimBranches {
  readonly followed: FlowBranch;
  /** Null of bodies without edges. */
  readonly open: FlowBranch | null;
  /** Share of the time for which a layer that has left the edge is back on the face, by line. */
  readonly backShares: readonly number[];
}

/** A body at one attitude in one stream, before the draw of what is not known. */
export interface ConditionedFlow {
  /** ln(Re / Re at which the rim's layer turns). */
  readonly rimMargin: number;
  /** ln(Re / Re at which the edge's layer stays), by line over the edge; empty of bodies without edges. */
  readonly edgeMargins: readonly number[];
  readonly laminar: RimBranches;
  readonly turned: RimBranches;
  /** 0 edge-on and face-on, 1 half-way between. */
  readonly tiltedness: number;
}

/** A flow with the share that it has between the attitudes that are known. */
export interface WeightedFlow {
  readonly flow: ConditionedFlow;
  /** Of a body at one attitude, these add up to 1. */
  readonly weight: number;
}

/** A body at one attitude in one stream, with the area that its coefficients are on. */
export interface ConditionedBody {
  /** By what its walls could act as: plain, or as rough as their grooves are deep. One or two. */
  readonly walls: readonly (readonly WeightedFlow[])[];
  /** Shadow across the stream, m^2. */
  readonly frontalArea: number;
  /** Largest extent across the axis, m. */
  readonly diameter: number;
  /** Reynolds number on the diameter from which the rim's layer turns, of the plain wall; Infinity when none. */
  readonly crisisReynolds: number;
}
