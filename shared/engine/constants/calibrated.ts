import { FITTED_NUMBERS } from "./fittedNumbers";

/** The fitted numbers as the solver is given them, so that a calibration can try others. What each rests on: fittedNumbers.ts. */
export interface CalibratedConstants {
  /** Weakening of the base suction by the section behind separation, see afterbody.ts. */
  readonly afterbodyInterference: number;
  /** A turbulent layer counts as separated when its friction Cf has fallen to this. */
  readonly detachmentFriction: number;
  /**
   * Slope of the wedge into which a separated shear layer spreads after transition; the layer reattaches where the
   * wedge meets the wall.
   */
  readonly reattachmentSlope: number;
  /** Shear stress / (rho Ue^2) of the turbulent layer that leaves a bubble. */
  readonly reattachmentStress: number;
  /** Re_theta at which a wall of k = theta turns the layer. */
  readonly roughTransition: number;
  /** Roughness Reynolds number Ue k / nu below which a wall does not bring transition forward. */
  readonly smoothWallLimit: number;
}

export const CALIBRATED: CalibratedConstants = {
  afterbodyInterference: FITTED_NUMBERS.afterbodyInterference.value,
  detachmentFriction: FITTED_NUMBERS.detachmentFriction.value,
  reattachmentSlope: FITTED_NUMBERS.reattachmentSlope.value,
  reattachmentStress: FITTED_NUMBERS.reattachmentStress.value,
  roughTransition: FITTED_NUMBERS.roughTransition.value,
  smoothWallLimit: FITTED_NUMBERS.smoothWallLimit.value,
};
