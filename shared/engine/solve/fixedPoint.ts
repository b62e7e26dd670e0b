import type { SideLayer } from "../layer/sideLayer";
import type { SeparatedFlow } from "./separatedFlow";
import { type FoundSeparation, separatesThere } from "./separationSearch";

/** A separated flow whose layers separate where the flow assumes it. */
export interface FixedPoint {
  readonly flow: SeparatedFlow;
  readonly lower: SideLayer;
  readonly upper: SideLayer;
  /** True when a layer changes its kind just at this point, so that the flow sits on the switch between the two. */
  readonly onSwitch: boolean;
}

/** The fixed point of a flow with one layer to follow: a symmetric one, or one over a section that lies on the floor. */
export function oneLayerFixedPoint({ probe, onSwitch }: FoundSeparation): FixedPoint {
  return { flow: probe.flow, lower: probe.layer, upper: probe.layer, onSwitch };
}

/**
 * Leaves out the points where the layer jumps between separating at the assumed point and far ahead of it: no steady flow
 * sits there. Where there is nothing else they are kept, as the flow has to sit somewhere; they are marked `onSwitch`.
 */
export function steadyOnes(points: FixedPoint[]): FixedPoint[] {
  const steady = points.filter(({ lower, upper }) => separatesThere(lower) && separatesThere(upper));
  return steady.length > 0 ? steady : points;
}
