import { WAKE_NUMBERS } from "../constants/wakeNumbers";
import type { WakeFlow } from "./wakeFlow";

/** H + 5 in the exponent of {@link squireYoungDrag}. */
const SQUIRE_YOUNG = WAKE_NUMBERS.squireYoungExponent.value;

/** Speeds / U at which layers that close behind the tail may leave it; a stream that is at rest there has separated before. */
const SLOWEST = WAKE_NUMBERS.slowestClosedWake.value;
const FASTEST = WAKE_NUMBERS.fastestClosedWake.value;
const TAIL_ROOM = WAKE_NUMBERS.tailRoom.value;

/**
 * Speed / U at which layers leave the tail and close behind it, without an outflow: that of the attached stream at both
 * points, with the circulation that makes it the same there. It is the limit of an open wake whose drag vanishes.
 * @returns null where the section still widens behind the points, or where no such speed is in range
 */
export function closedSpeedRatio(wake: WakeFlow): number | null {
  if (wake.widestBehind > TAIL_ROOM * wake.separationWidth) return null;
  const speedRatio = -wake.amplitude[0] / wake.amplitude[1];
  return speedRatio > SLOWEST && speedRatio < FASTEST ? speedRatio : null;
}

/**
 * Profile drag coefficient of one side of an attached flow, on the length that theta is given in: the momentum defect
 * that the layer has at the tail, carried into the wake to where the pressure is that of the stream,
 *
 *     Cd = 2 theta Ue^((H + 5) / 2).
 *
 * Source: Squire & Young (1938), ARC R&M 1838 (from memory).
 * @param theta momentum thickness at the tail
 * @param H     shape factor there
 * @param Ue    edge speed / U there
 */
export function squireYoungDrag(theta: number, H: number, Ue: number): number {
  return 2 * theta * Ue ** ((H + SQUIRE_YOUNG) / 2);
}
