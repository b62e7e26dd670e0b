import type { FlowCondition } from "../condition";
import type { FloorContact } from "../flow/floorContact";
import { type FixedPoint, oneLayerFixedPoint, steadyOnes } from "./fixedPoint";
import { followOneSide } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { separatedFlow } from "./separatedFlow";
import { closeBracket, isBracket, type SideProbe } from "./separationSearch";

const SCAN_POINTS = 64;
/** Share of the way from the front of the contact around to its rear over which separation is looked for, in node steps. */
const FIRST_SHARE = 0.02;
const LAST_SHARE = 0.97;
/** Where no crossing is found, the place is taken whose layer misses it least, if by no more than this / D. */
const LARGEST_MISS = 1;

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
  // The stream may come from any side: the way begins at the contact, not at the nose.
  const start = contact.front + nodes.count;
  const probeAt = (distance: number): SideProbe | null => {
    const upper = start - distance;
    const solved = separatedFlow(flow, section, contact.middle, upper);
    if (solved === null) return null;
    return { distance, flow: solved, layer: followOneSide(section, condition, solved, "upper") };
  };
  const found: FixedPoint[] = [];
  const way = start - contact.rear;
  let previous: SideProbe | null = null;
  let nearest: SideProbe | null = null;
  for (let i = 0; i <= SCAN_POINTS; i++) {
    const next = probeAt(way * (FIRST_SHARE + ((LAST_SHARE - FIRST_SHARE) * i) / SCAN_POINTS));
    if (previous !== null && next !== null && isBracket(previous, next)) {
      found.push(oneLayerFixedPoint(closeBracket(probeAt, [previous, next])));
    }
    previous = next;
    if (next !== null && missOf(next) < (nearest === null ? LARGEST_MISS : missOf(nearest))) nearest = next;
  }
  if (found.length > 0 || nearest === null) return steadyOnes(found);
  return [oneLayerFixedPoint({ probe: nearest, onSwitch: true })];
}

function missOf({ layer }: SideProbe): number {
  return Math.abs(layer.residual);
}
