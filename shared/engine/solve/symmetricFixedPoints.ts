import type { FlowCondition } from "../condition";
import { type FixedPoint, oneLayerFixedPoint, steadyOnes } from "./fixedPoint";
import { followOneSide } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { type SeparatedFlow, separatedFlow } from "./separatedFlow";
import { type Bracket, closeBracket, isBracket, type SideProbe, separatesThere } from "./separationSearch";

/** Every how many tabulated wakes the layers are followed while looking for a crossing: everywhere, and at least where one may be. */
const COARSE_STRIDE = 8;
const FINE_STRIDE = 2;
/** Node steps by which the nearest approach is looked for, where there is no crossing: the first, and where it ends. */
const NEAREST_FIRST_STEP = 1;
const NEAREST_LAST_STEP = 0.01;
/** A residual larger than this many times the way to the next probe does not pass through zero and back on that way. */
const HIDING_SLOPE = 1;

/**
 * All stable symmetric fixed points of the separation map, front to rear: the layer is still attached at separation
 * points a little ahead and has separated at points a little behind. Two states closer together than the scan's fine
 * stride are not told apart.
 */
export function symmetricFixedPoints(section: PreparedSection, condition: FlowCondition): FixedPoint[] {
  const { wakes } = section;
  const found: FixedPoint[] = [];
  const last = wakes.length - 1;
  const search = (from: number, before: SideProbe, to: number, after: SideProbe): void => {
    if (to - from <= FINE_STRIDE) {
      if (isBracket(before, after)) found.push(closeSymmetric(section, condition, [before, after]));
    } else if (mayHideCrossing(before, after)) {
      const middle = from + FINE_STRIDE * Math.max(1, Math.floor((to - from) / (2 * FINE_STRIDE)));
      const between = probeFlow(section, condition, wakes[middle]);
      search(from, before, middle, between);
      search(middle, between, to, after);
    }
  };
  let previous = last >= 0 ? probeFlow(section, condition, wakes[0]) : null;
  for (let i = 0; previous !== null && i < last; i += COARSE_STRIDE) {
    const next = Math.min(i + COARSE_STRIDE, last);
    const probe = probeFlow(section, condition, wakes[next]);
    search(i, previous, next, probe);
    previous = probe;
  }
  if (found.length > 0 || last < 0) return steadyOnes(found);
  return [nearestSymmetric(section, condition)];
}

/**
 * The symmetric flow whose layers come nearest to separating where it lets them, where none is found at which they do: a
 * thin plate's leave its edge, ahead of every wake that stands. Found by halving steps from the best of the wakes.
 */
function nearestSymmetric(section: PreparedSection, condition: FlowCondition): FixedPoint {
  const miss = ({ layer }: SideProbe) => Math.abs(layer.residual);
  let best = section.wakes
    .map((flow) => probeFlow(section, condition, flow))
    .reduce((a, b) => (miss(b) < miss(a) ? b : a));
  for (let step = NEAREST_FIRST_STEP; step > NEAREST_LAST_STEP; ) {
    let next = best;
    for (const distance of [best.distance - step, best.distance + step]) {
      const probe = probeAt(section, condition, distance);
      if (probe !== null && miss(probe) < miss(next)) next = probe;
    }
    if (next === best) step /= 2;
    best = next;
  }
  return oneLayerFixedPoint({ probe: best, onSwitch: true });
}

/** Whether the residual may change its sign between two probes, as far as can be told from its values there. */
function mayHideCrossing(before: SideProbe, after: SideProbe): boolean {
  const [a, b] = [before.layer, after.layer];
  if (a.residual > 0 !== b.residual > 0 || a.state !== b.state) return true;
  const end = ({ flow }: SideProbe) => flow.lower.arc[flow.lower.count - 1];
  return Math.min(Math.abs(a.residual), Math.abs(b.residual)) < HIDING_SLOPE * Math.abs(end(after) - end(before));
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
  return oneLayerFixedPoint(closeBracket((distance) => probeAt(section, condition, distance), bracket));
}

function probeAt(section: PreparedSection, condition: FlowCondition, distance: number): SideProbe | null {
  const { flow, nodes } = section;
  if (!(distance > 0 && distance < nodes.count / 2 - 1)) return null;
  const solved = separatedFlow(flow, section, distance, nodes.count - distance);
  return solved === null ? null : probeFlow(section, condition, solved);
}
