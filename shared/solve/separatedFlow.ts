import type { SectionFlow } from "../flow/sectionFlow";
import { type SideStations, sideStations, stagnationPosition } from "../layer/sideStations";
import { afterbodySuctionShare } from "../wake/afterbody";
import { basePressures } from "../wake/basePressure";
import type { VortexStreetTable } from "../wake/vortexStreet";
import { surfaceVelocity, type WakeFlow, wakeFlow } from "../wake/wakeFlow";

/** The flow around a section that separates at two given points, its base pressure closed and both sides laid out for the layers. */
export interface SeparatedFlow {
  readonly wake: WakeFlow;
  /** k, the surface speed / U at separation. */
  readonly speedRatio: number;
  readonly strouhal: number;
  /** Counter-clockwise surface velocity / U, shape [count]. */
  readonly velocity: Float64Array;
  /** Front stagnation point, node steps from the nose (may be negative). */
  readonly stagnation: number;
  readonly lower: SideStations;
  /** The same object as `lower` in a symmetric flow. */
  readonly upper: SideStations;
  /** How many base pressures satisfied the closure; the one with the highest suction is used. */
  readonly rootCount: number;
}

/**
 * Solves the wake for two separation points and closes its base pressure. Depends on the shape and the two points alone,
 * not on the Reynolds number.
 * @param lower separation on the lower side, node steps from the nose, counter-clockwise
 * @param upper separation on the upper side; count - lower in a symmetric flow
 * @returns null when no base pressure closes the wake or the wetted contour has no stagnation point
 */
export function separatedFlow(
  flow: SectionFlow,
  street: VortexStreetTable,
  afterbodyInterference: number,
  lower: number,
  upper: number,
): SeparatedFlow | null {
  const wake = wakeFlow(flow, lower, upper);
  if (!wake.ok) return null;
  const closed = basePressures(wake.value, street);
  if (!closed.ok) return null;
  const free = closed.value[closed.value.length - 1];
  const suctionShare = afterbodySuctionShare(wake.value.afterbodyLength, free.sheddingWidth, afterbodyInterference);
  const speedRatio = Math.sqrt(1 + suctionShare * (free.speedRatio ** 2 - 1));
  const velocity = surfaceVelocity(wake.value, speedRatio);
  const stagnation = flow.operator.folded ? 0 : stagnationPosition(velocity, lower, upper);
  if (stagnation === null || stagnation >= lower || stagnation <= upper - flow.nodes.count) return null;
  const { nodes, referenceWidth } = flow;
  const lowerSide = sideStations(nodes, velocity, "lower", stagnation, lower, speedRatio, referenceWidth);
  const upperSide = flow.operator.folded
    ? lowerSide
    : sideStations(nodes, velocity, "upper", stagnation, upper, speedRatio, referenceWidth);
  return {
    wake: wake.value,
    speedRatio,
    strouhal: free.strouhal,
    velocity,
    stagnation,
    lower: lowerSide,
    upper: upperSide,
    rootCount: closed.value.length,
  };
}
