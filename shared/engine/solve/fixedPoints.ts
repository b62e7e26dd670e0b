import type { FlowCondition } from "../condition";
import { SOLVER_NUMBERS } from "../constants/solverNumbers";
import type { SideLayer } from "../layer/sideLayer";
import { followOneSide } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { type SeparatedFlow, separatedFlow } from "./separatedFlow";

/** A separated flow whose layers separate where the flow assumes it. */
export interface FixedPoint {
  readonly flow: SeparatedFlow;
  readonly lower: SideLayer;
  readonly upper: SideLayer;
  /** True when the layer changes its kind just at this point, so that the flow sits on the switch between the two. */
  readonly onSwitch: boolean;
}

interface Probe {
  readonly position: number;
  readonly flow: SeparatedFlow;
  readonly layer: SideLayer;
}

/** A layer that separates this near to the assumed point (/ D) has found it; else the bracket is closed to this many node steps. */
export const RESIDUAL_TOLERANCE = 2e-5;
const POSITION_TOLERANCE = 1e-3;
const MOST_REFINEMENTS = 40;
/** A layer that separates further than this (/ D) ahead of the assumed point has not found it: the residual jumps there. */
const LARGEST_JUMP = SOLVER_NUMBERS.largestJump.value;
/** Every how many tabulated wakes the layers are followed while looking for a crossing. */
const SCAN_STRIDE = 2;

/**
 * All stable symmetric fixed points of the separation map, front to rear: the layer is still attached at separation
 * points a little ahead and has separated at points a little behind. Two states closer together than the scan's stride
 * are not told apart.
 */
export function symmetricFixedPoints(section: PreparedSection, condition: FlowCondition): FixedPoint[] {
  const { wakes } = section;
  const found: FixedPoint[] = [];
  let previous = wakes.length > 0 ? probeSymmetric(section, condition, wakes[0]) : null;
  for (let i = SCAN_STRIDE; previous !== null && i - SCAN_STRIDE < wakes.length - 1; i += SCAN_STRIDE) {
    const probe = probeSymmetric(section, condition, wakes[Math.min(i, wakes.length - 1)]);
    if (previous.layer.residual > 0 && probe.layer.residual <= 0) {
      found.push(refine(section, condition, previous, probe));
    }
    previous = probe;
  }
  return steadyOnes(found);
}

/** Flows of a symmetric section whose layers separate laminar where the wake assumes it; they do not depend on the condition. */
export function laminarFixedFlows(section: PreparedSection): SeparatedFlow[] {
  // So slow that nothing turns the layer, attached or separated.
  const quiet = { reynolds: 1, sandGrainRoughnessRatio: 0, turbulenceIntensity: 0 };
  return symmetricFixedPoints(section, quiet)
    .filter(({ onSwitch }) => !onSwitch)
    .map(({ flow }) => flow);
}

/**
 * Leaves out the points where the layer jumps between separating at the assumed point and far ahead of it: no steady flow
 * sits there. Where there is nothing else they are kept, as the flow has to sit somewhere; they are marked `onSwitch`.
 */
export function steadyOnes(points: FixedPoint[]): FixedPoint[] {
  const steady = points.filter(({ lower, upper }) => separatesThere(lower) && separatesThere(upper));
  return steady.length > 0 ? steady : points;
}

/** Whether a layer separates where the flow assumes it. */
export function separatesThere(layer: SideLayer): boolean {
  return layer.residual > -LARGEST_JUMP;
}

function probeSymmetric(section: PreparedSection, condition: FlowCondition, flow: SeparatedFlow): Probe {
  return { position: flow.wake.lower, flow, layer: followOneSide(section, condition, flow, "lower") };
}

/** Closes the bracket by the Illinois form of regula falsi, falling back to halving where the residual jumps. */
function refine(section: PreparedSection, condition: FlowCondition, attached: Probe, separated: Probe): FixedPoint {
  let a = attached;
  let b = separated;
  let fa = a.layer.residual;
  let fb = b.layer.residual;
  let kept: "a" | "b" | null = null;
  for (const flow of section.laminarFlows) {
    // A laminar layer separates in the same place at every Reynolds number, so the answer may be at hand; it was closed
    // as far as the layer's stations tell one place from the next.
    if (!(flow.wake.lower > a.position && flow.wake.lower < b.position)) continue;
    const probe = probeSymmetric(section, condition, flow);
    const { state, residual } = probe.layer;
    if (state === "laminar separation" && residual <= 0 && separatesThere(probe.layer)) {
      return { flow, lower: probe.layer, upper: probe.layer, onSwitch: false };
    }
  }
  for (let i = 0; i < MOST_REFINEMENTS && b.position - a.position > POSITION_TOLERANCE; i++) {
    const smooth = a.layer.state === b.layer.state && i % 4 !== 3;
    const share = smooth ? Math.min(0.98, Math.max(0.02, (fa + RESIDUAL_TOLERANCE / 2) / (fa - fb))) : 0.5;
    const position = a.position + share * (b.position - a.position);
    const flow = separatedFlow(
      section.flow,
      section.street,
      section.constants.afterbodyInterference,
      position,
      section.nodes.count - position,
    );
    if (flow === null) break;
    const probe = probeSymmetric(section, condition, flow);
    if (probe.layer.residual > 0) {
      a = probe;
      fa = probe.layer.residual;
      if (kept === "b") fb /= 2;
      kept = "b";
    } else {
      b = probe;
      fb = probe.layer.residual;
      if (kept === "a") fa /= 2;
      kept = "a";
    }
    // Only a layer that does separate will do: the state reports where.
    if (a.layer.state === b.layer.state && b.layer.residual > -RESIDUAL_TOLERANCE) break;
  }
  const onSwitch = a.layer.state !== b.layer.state || !separatesThere(b.layer);
  return { flow: b.flow, lower: b.layer, upper: b.layer, onSwitch };
}
