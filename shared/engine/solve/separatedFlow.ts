import type { CalibratedConstants } from "../constants/calibrated";
import type { SectionFlow } from "../flow/sectionFlow";
import type { LayerMethod } from "../layer/layerMethod";
import type { SideOutline } from "../layer/sideOutline";
import { type Side, type SideStations, sideStations, stagnationPosition } from "../layer/sideStations";
import { afterbodySuctionShare } from "../wake/afterbody";
import { basePressures, wakeStrouhal } from "../wake/basePressure";
import { closedSpeedRatio } from "../wake/closedWake";
import { depthPeak } from "../wake/depthPeak";
import { cornerPosition, restingWake } from "../wake/restingWake";
import type { VortexStreetTable } from "../wake/vortexStreet";
import { cutsThroughBody } from "../wake/wakeClearance";
import { quadraticAt, surfaceVelocity, type WakeFlow, wakeFlow } from "../wake/wakeFlow";

/** The flow around a section that separates at two given points, its base pressure closed (of several the one with the highest suction) and both sides laid out for the layers. */
export interface SeparatedFlow {
  readonly wake: WakeFlow;
  /** k, the surface speed / U at separation. */
  readonly speedRatio: number;
  /** 0 where the wake is closed. */
  readonly strouhal: number;
  /** True where no vortex street stands behind the tail: the layers close behind it, without an outflow. */
  readonly closedWake: boolean;
  /** Counter-clockwise surface velocity / U, shape [count]. */
  readonly velocity: Float64Array;
  /** Front stagnation point, node steps from the nose (may be negative). */
  readonly stagnation: number;
  /** Laid out when first read: a search along one side has no use for the other. */
  readonly lower: SideStations;
  /** The same object as `lower` in a symmetric flow and on a floor, where the lower side is that of the mirror image. */
  readonly upper: SideStations;
}

/** What closes a flow, alike for all separation points of a section. */
export interface FlowClosure {
  readonly street: VortexStreetTable;
  readonly constants: CalibratedConstants;
  readonly layerMethod: LayerMethod;
}

/**
 * Solves the wake for two separation points and closes its base pressure. Depends on the shape and the two points alone,
 * not on the Reynolds number. On a floor without a gap `lower` is not used: the base ends at the contact.
 * @param lower separation on the lower side, node steps from the nose, counter-clockwise
 * @param upper separation on the upper side; count - lower in a symmetric flow
 * @returns null when neither a street nor the tail closes the wake, its layers would pass through the body, or the wetted contour has no stagnation point
 */
export function separatedFlow(
  flow: SectionFlow,
  { street, constants, layerMethod }: FlowClosure,
  lower: number,
  upper: number,
): SeparatedFlow | null {
  const contact = flow.floor?.contact ?? null;
  const wake = contact === null ? wakeFlow(flow, lower, upper) : restingWake(flow, contact, upper);
  if (!wake.ok) return null;
  const openRatio = openSpeedRatio(flow, wake.value, street, constants.afterbodyInterference);
  const speedRatio = openRatio ?? (contact === null ? closedSpeedRatio(wake.value) : null);
  if (speedRatio === null) return null;
  const velocity = surfaceVelocity(wake.value, speedRatio);
  const stagnation = flow.operator.folded
    ? 0
    : contact === null
      ? stagnationPosition(velocity, lower, upper)
      : cornerPosition(velocity, contact, upper);
  if (stagnation === null) return null;
  // A side of fewer than three node steps carries no layer.
  const shortest = contact === null ? SHORTEST_SIDE : 0;
  if (!(lower - stagnation > shortest && stagnation + flow.nodes.count - upper > shortest)) return null;
  const { nodes, referenceWidth } = flow;
  const parallelWake = parallelWakeVelocity(wake.value, speedRatio);
  const side = (which: Side, separation: number): SideStations =>
    sideStations(
      nodes,
      velocity,
      which,
      stagnation,
      separation,
      speedRatio,
      referenceWidth,
      layerMethod.laminarLayer,
      flow.incidence,
      parallelWake,
    );
  const alike = flow.operator.folded || contact !== null;
  let lowerSide: SideStations | null = null;
  let upperSide: SideStations | null = null;
  return {
    wake: wake.value,
    speedRatio,
    // Of a section on the floor the closure sees the doubled body, 2 D high.
    strouhal: openRatio === null ? 0 : wakeStrouhal(wake.value, openRatio, street) / (contact === null ? 1 : 2),
    closedWake: openRatio === null,
    velocity,
    stagnation,
    get lower() {
      lowerSide ??= contact === null ? side("lower", lower) : side("upper", upper);
      return lowerSide;
    },
    get upper() {
      upperSide ??= alike ? this.lower : side("upper", upper);
      return upperSide;
    },
  };
}

/** The change of surface velocity that takes a wake that widens, Q / U above its width at separation, to one that does not. */
function parallelWakeVelocity(wake: WakeFlow, speedRatio: number): SideOutline["parallelWake"] {
  const excess = wake.wakeWidth[0] + speedRatio * wake.wakeWidth[1] - wake.separationWidth;
  if (!(excess > 0)) return null;
  const factor = -excess / wake.wakeWidth[1];
  return Number.isFinite(factor) ? { velocity: wake.velocityPerRatio, factor } : null;
}

/** Fewest node steps of a side from the stagnation point to separation. */
const SHORTEST_SIDE = 3;

/** Pressure drag coefficient below which a wake flow is an artefact of its panels, not a narrow wake that recovers. */
const MOST_THRUST = -0.05;

/**
 * Speed / U at separation of a wake that sheds a vortex street; null where none closes it, its layers would pass through
 * the body, or its drag is none that pressures can have: thrust, or more than stagnation pressure on the whole front
 * against the street's strongest suction on the whole rear, k^2.
 */
function openSpeedRatio(
  flow: SectionFlow,
  wake: WakeFlow,
  street: VortexStreetTable,
  afterbodyInterference: number,
): number | null {
  const closed = basePressures(wake, street);
  if (!closed.ok) return null;
  const free = closed.value[closed.value.length - 1];
  const length = wake.afterbodyLength / wake.afterbodyHeight;
  const width = free.sheddingWidth / wake.afterbodyHeight;
  const suctionShare =
    flow.wakeSuctionShare * afterbodySuctionShare(length, width, afterbodyInterference) * depthPeak(length, width);
  const speedRatio = Math.sqrt(1 + suctionShare * (free.speedRatio ** 2 - 1));
  const drag = quadraticAt(wake.pressureDrag, speedRatio);
  if (!(drag > MOST_THRUST && drag < street.speedRatio[street.speedRatio.length - 1] ** 2)) return null;
  return cutsThroughBody(wake, speedRatio, free.sheddingWidth) ? null : speedRatio;
}
