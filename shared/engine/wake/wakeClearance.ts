import { WAKE_NUMBERS } from "../constants/wakeNumbers";
import type { WakeFlow } from "./wakeFlow";

/** A tail counts as inside the wake while it is not wider than this times the wake: the layers are not thin there. */
const TAIL_ROOM = WAKE_NUMBERS.tailRoom.value;
const NARROW_SHARE = WAKE_NUMBERS.narrowSeparationShare.value;
const CLEARING_SHARE = WAKE_NUMBERS.clearingWakeShare.value;

/**
 * Whether a wake stays too narrow to clear the section behind its separation points, so that its layers would have to
 * pass through the body: no flow has such a state. The wake is taken to change from its width at separation to its
 * displacement width far downstream over two separation widths, half of it over the first. Three kinds:
 * one that opens at a narrow part and never grows as wide as the section behind; one whose water at rest is above
 * stream pressure (k below 1), which does not spread at all, ahead of a wider part; one that narrows faster than the tail.
 * @param speedRatio k, the afterbody's share included
 * @param sheddingWidth d' / D of the wake as the closure found it, the mean of both widths, see basePressure.ts
 */
export function cutsThroughBody(wake: WakeFlow, speedRatio: number, sheddingWidth: number): boolean {
  const { separationWidth, widestBehind, heightBehind } = wake;
  const displacementWidth = wake.wakeWidth[0] + speedRatio * wake.wakeWidth[1];
  if (separationWidth < NARROW_SHARE * widestBehind && displacementWidth < CLEARING_SHARE * widestBehind) return true;
  if (speedRatio < 1 && widestBehind > TAIL_ROOM * separationWidth) return true;
  const freeWidth = (sheddingWidth * sheddingWidth) / separationWidth;
  return freeWidth < separationWidth && heightBehind > (TAIL_ROOM * (separationWidth + freeWidth)) / 2;
}
