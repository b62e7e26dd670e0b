import type { FlowCondition } from "../condition";
import type { FloorContact } from "../flow/floorContact";
import type { SideLayer } from "../layer/sideLayer";
import type { FixedPoint } from "./fixedPoints";
import { followOneSide } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { type SeparatedFlow, separatedFlow } from "./separatedFlow";

interface Probe {
  readonly upper: number;
  readonly flow: SeparatedFlow;
  readonly layer: SideLayer;
}

const SCAN_POINTS = 48;
/** Node steps. */
const POSITION_TOLERANCE = 1e-3;
/** Share of the way from nose to contact over which separation is looked for, in node steps. */
const FIRST_SHARE = 0.02;
const LAST_SHARE = 0.97;

/**
 * All stable fixed points of a section that lies on the floor, front to rear. There is one separation point to find, on
 * the upper side, as in the symmetric flow of the doubled body.
 */
export function restingFixedPoints(
  section: PreparedSection,
  condition: FlowCondition,
  contact: FloorContact,
): FixedPoint[] {
  const { flow, street, constants, nodes } = section;
  const probe = (upper: number): Probe | null => {
    const solved = separatedFlow(flow, street, constants.afterbodyInterference, contact.middle, upper);
    if (solved === null) return null;
    return { upper, flow: solved, layer: followOneSide(section, condition, solved, "upper") };
  };
  const found: FixedPoint[] = [];
  const way = nodes.count - contact.rear;
  let previous: Probe | null = null;
  for (let i = 0; i <= SCAN_POINTS; i++) {
    const next = probe(nodes.count - way * (FIRST_SHARE + ((LAST_SHARE - FIRST_SHARE) * i) / SCAN_POINTS));
    if (previous !== null && next !== null && previous.layer.residual > 0 && next.layer.residual <= 0) {
      found.push(closeBracket(probe, previous, next));
    }
    previous = next;
  }
  return found;
}

/** Halves the bracket between an attached and a separated probe, by the secant where the layer keeps its kind. */
function closeBracket(probe: (upper: number) => Probe | null, attached: Probe, separated: Probe): FixedPoint {
  let a = attached;
  let b = separated;
  for (let i = 0; i < 40 && a.upper - b.upper > POSITION_TOLERANCE; i++) {
    const smooth = a.layer.state === b.layer.state && i % 3 !== 2;
    const secant = a.layer.residual / (a.layer.residual - b.layer.residual);
    const share = smooth ? Math.min(0.95, Math.max(0.05, secant)) : 0.5;
    const next = probe(a.upper + share * (b.upper - a.upper));
    if (next === null) break;
    if (next.layer.residual > 0) a = next;
    else b = next;
  }
  return { flow: b.flow, lower: b.layer, upper: b.layer, onSwitch: a.layer.state !== b.layer.state };
}
