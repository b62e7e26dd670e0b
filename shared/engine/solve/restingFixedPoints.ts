import type { FlowCondition } from "../condition";
import type { FloorContact } from "../flow/floorContact";
import { type FixedPoint, oneLayerFixedPoint, steadyOnes } from "./fixedPoint";
import { followOneSide } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { separatedFlow } from "./separatedFlow";
import { closeBracket, isBracket, type SideProbe } from "./separationSearch";

const SCAN_POINTS = 48;
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
  const { flow, nodes } = section;
  const probeAt = (distance: number): SideProbe | null => {
    const upper = nodes.count - distance;
    const solved = separatedFlow(flow, section, contact.middle, upper);
    if (solved === null) return null;
    return { distance, flow: solved, layer: followOneSide(section, condition, solved, "upper") };
  };
  const found: FixedPoint[] = [];
  const way = nodes.count - contact.rear;
  let previous: SideProbe | null = null;
  for (let i = 0; i <= SCAN_POINTS; i++) {
    const next = probeAt(way * (FIRST_SHARE + ((LAST_SHARE - FIRST_SHARE) * i) / SCAN_POINTS));
    if (previous !== null && next !== null && isBracket(previous, next)) {
      found.push(oneLayerFixedPoint(closeBracket(probeAt, [previous, next])));
    }
    previous = next;
  }
  return steadyOnes(found);
}
