import type { FlowCondition } from "../condition";
import { type FixedPoint, oneLayerFixedPoint, steadyOnes } from "./fixedPoint";
import { followOneSide } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { type SeparatedFlow, separatedFlow } from "./separatedFlow";
import { type Bracket, closeBracket, isBracket, type SideProbe, separatesThere } from "./separationSearch";

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
  let previous = wakes.length > 0 ? probeFlow(section, condition, wakes[0]) : null;
  for (let i = SCAN_STRIDE; previous !== null && i - SCAN_STRIDE < wakes.length - 1; i += SCAN_STRIDE) {
    const probe = probeFlow(section, condition, wakes[Math.min(i, wakes.length - 1)]);
    if (isBracket(previous, probe)) found.push(closeSymmetric(section, condition, [previous, probe]));
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

function probeFlow(section: PreparedSection, condition: FlowCondition, flow: SeparatedFlow): SideProbe {
  return { distance: flow.wake.lower, flow, layer: followOneSide(section, condition, flow, "lower") };
}

function closeSymmetric(section: PreparedSection, condition: FlowCondition, bracket: Bracket): FixedPoint {
  const [attached, separated] = bracket;
  // A laminar layer separates in the same place at every Reynolds number, so the answer may be at hand; it was closed
  // as far as the layer's stations tell one place from the next.
  for (const flow of section.laminarFlows) {
    if (!(flow.wake.lower > attached.distance && flow.wake.lower < separated.distance)) continue;
    const probe = probeFlow(section, condition, flow);
    const { state, residual } = probe.layer;
    if (state === "laminar separation" && residual <= 0 && separatesThere(probe.layer)) {
      return oneLayerFixedPoint({ probe, onSwitch: false });
    }
  }
  const { flow, street, constants, nodes } = section;
  const probeAt = (distance: number): SideProbe | null => {
    const solved = separatedFlow(flow, street, constants.afterbodyInterference, distance, nodes.count - distance);
    return solved === null ? null : probeFlow(section, condition, solved);
  };
  return oneLayerFixedPoint(closeBracket(probeAt, bracket));
}
