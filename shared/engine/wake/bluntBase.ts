import { WAKE_NUMBERS } from "../constants/wakeNumbers";
import { basePressures } from "./basePressure";
import type { VortexStreetTable } from "./vortexStreet";
import type { WakeFlow } from "./wakeFlow";

/** Shedding width of a wake whose layers leave along the sides, over the width of the base. */
const PARALLEL_WIDTH = WAKE_NUMBERS.parallelWakeWidth.value;

/**
 * Separation speed ratio of a wake whose layers are fixed to the rear corners, instead of where the pressure at their edge
 * lets go of them. Two things differ from a wake that opens on a bend:
 *
 * - The layers leave along the sides, so that the wake does not widen: its shedding width is nearly that of the base,
 *   d' = 0.95 w, in the closure Cd S = F(k), S = 0.16 k D / d' of basePressure.ts.
 * - The layers are no longer thin. The street rolls up from base and layers together, between the middles of both
 *   layers w + delta wide, and the base has its share of the suction, w / (w + delta). The form is ours.
 *
 * Layers that leave a tapering tail run together behind it, however sharp its end is: a wake that narrows counts as one
 * of parallel sides only as far as it does not.
 * @param speedRatio k of the wake as the closure has it without the corners
 * @param thickness delta / D, thickness of the layers where they leave
 * @param fixedShare how far the corners hold them, from 0 to 1
 */
export function bluntBaseSpeedRatio(
  wake: WakeFlow,
  street: VortexStreetTable,
  speedRatio: number,
  thickness: number,
  fixedShare: number,
): number {
  const width = wake.separationWidth;
  const closed = basePressures({ ...wake, wakeWidth: [PARALLEL_WIDTH ** 2 * width, 0] }, street);
  if (!closed.ok) return speedRatio;
  const fixed = closed.value[closed.value.length - 1].speedRatio;
  const fixedSuction = (width / (width + thickness)) * (fixed * fixed - 1);
  const displacementWidth = wake.wakeWidth[0] + speedRatio * wake.wakeWidth[1];
  const parallel = Math.max(0, Math.min(1, displacementWidth / (PARALLEL_WIDTH ** 2 * width)));
  const share = fixedShare * parallel;
  return Math.sqrt(1 + (1 - share) * (speedRatio * speedRatio - 1) + share * fixedSuction);
}
