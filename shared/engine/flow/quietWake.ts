import { WAKE_NUMBERS } from "../constants/wakeNumbers";

/**
 * Share of the vortex street's base suction that is left where a plane through the wake keeps it from shedding: the mean
 * of what a long splitter plate leaves behind a circular cylinder (Cd from 1.15 to 0.72, Roshko 1955, J. Aeronaut. Sci.
 * 22, 124; 1.2 to 0.8, Apelt & West 1975, J. Fluid Mech. 71, 145: base suction to about 0.6) and behind a plate across
 * the stream (Cd from 1.98 to 1.38, Apelt & West 1975: to about 0.5). All from memory, low confidence. None of these was
 * measured near a floor, nor past the drag crisis.
 */
export const QUIET_WAKE_SUCTION_SHARE = WAKE_NUMBERS.quietWakeSuctionShare.value;

/** Gap / D below which measured wakes of circular cylinders do not shed regularly: Bearman & Zdravkovich (1978), J. Fluid Mech. 89, 33 (from memory). */
export const QUIET_WAKE_GAP_RATIO = WAKE_NUMBERS.quietWakeGap.value;

/** Gap / D above which a floor leaves the shedding alone: Nishino, Roberts & Zhang (2007), Phys. Fluids 19, 025103, over a moving floor (from memory). */
export const FREE_WAKE_GAP_RATIO = WAKE_NUMBERS.freeWakeGap.value;

/**
 * Share of the street's base suction of a section above a floor. To a flow whose floor slips, the floor is the middle
 * plane of section and mirror image, as a splitter plate is. Linear between the gaps where shedding ends and begins: an
 * assumption without a source.
 * @param gapRatio gap / D, 0 or more
 */
export function quietWakeSuctionShare(gapRatio: number): number {
  const shedding = (gapRatio - QUIET_WAKE_GAP_RATIO) / (FREE_WAKE_GAP_RATIO - QUIET_WAKE_GAP_RATIO);
  return QUIET_WAKE_SUCTION_SHARE + (1 - QUIET_WAKE_SUCTION_SHARE) * Math.min(1, Math.max(0, shedding));
}
