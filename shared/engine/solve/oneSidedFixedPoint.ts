import type { FlowCondition } from "../condition";
import type { FixedPoint } from "./fixedPoint";
import { followOneSide } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { isBracket, type SideProbe } from "./separationSearch";
import { twoSidedFixedPoint } from "./twoSidedFixedPoints";
import { twoSidedFlow } from "./twoSidedFlow";
import type { SeparationPair } from "./zeroCurves";

/** Places tried along the upper side, and the shares of the way around between which they lie. */
const PLACES = 26;
const FIRST_SHARE = 0.03;
const LAST_SHARE = 0.62;

/**
 * The state of a symmetric section that separates laminar below and later above: near the symmetric states between which
 * it lies where both are known, else from the last place above at which a layer separates while the lower side is held.
 * @param points symmetric states, front to rear, the first one laminar
 */
export function oneSidedFixedPoint(
  section: PreparedSection,
  condition: FlowCondition,
  points: readonly FixedPoint[],
): FixedPoint | null {
  const { count } = section.nodes;
  const lower = points[0].flow.wake.lower;
  if (points.length > 1) {
    const late = count - points[points.length - 1].flow.wake.upper;
    const between = oneSided(section, condition, { lower, upper: late });
    if (between !== null) return between;
  }
  const upper = lastSeparation(section, condition, lower);
  return upper === null ? null : oneSided(section, condition, { lower, upper });
}

function oneSided(section: PreparedSection, condition: FlowCondition, guess: SeparationPair): FixedPoint | null {
  const found = twoSidedFixedPoint(section, condition, guess);
  return found !== null && found.lower.state !== found.upper.state ? found : null;
}

function lastSeparation(section: PreparedSection, condition: FlowCondition, lower: number): number | null {
  const { nodes } = section;
  const whole = section.fullFlow();
  let behind: SideProbe | null = null;
  for (let i = PLACES; i >= 0; i--) {
    const distance = nodes.count * (FIRST_SHARE + ((LAST_SHARE - FIRST_SHARE) * i) / PLACES);
    const flow = twoSidedFlow(whole, section, lower, distance);
    const probe = flow === null ? null : { distance, flow, layer: followOneSide(section, condition, flow, "upper") };
    if (probe !== null && behind !== null && isBracket(probe, behind)) return (probe.distance + behind.distance) / 2;
    behind = probe;
  }
  return null;
}
