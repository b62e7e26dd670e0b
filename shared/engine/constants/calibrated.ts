/**
 * The calibrated constants of the engine: every number here was fitted to measurements, never per shape, and there are
 * no others. Published constants stand beside their formulas and are not touched.
 */
export interface CalibratedConstants {
  /**
   * Weakening of the base suction by the section behind separation, see afterbody.ts. Fitted on sharp rectangles of
   * length/height 1 to 3 and rounded squares.
   */
  readonly afterbodyInterference: number;
  /** A turbulent layer counts as separated when its friction Cf has fallen to this. Fitted on the transcritical Cd of smooth and rough cylinders. */
  readonly detachmentFriction: number;
  /**
   * Slope of the wedge into which a separated shear layer spreads after transition; the layer reattaches where the
   * wedge meets the wall. Fitted on the Reynolds number of the smooth cylinder's drag crisis at low turbulence.
   */
  readonly reattachmentSlope: number;
  /** Shear stress / (rho Ue^2) of the turbulent layer that leaves a bubble. Fitted on the smooth cylinder's lowest Cd. */
  readonly reattachmentStress: number;
  /** Re_theta at which a wall of k = theta turns the layer. Fitted on Achenbach's (1977) critical Re of rough cylinders. */
  readonly roughTransition: number;
  /** Roughness Reynolds number Ue k / nu below which a wall does not bring transition forward. Fitted on the smooth cylinder above Re 2e6. */
  readonly smoothWallLimit: number;
}

export const CALIBRATED: CalibratedConstants = {
  afterbodyInterference: 1.37,
  detachmentFriction: 0.00103,
  reattachmentSlope: 0.69,
  reattachmentStress: 0.1,
  roughTransition: 232,
  smoothWallLimit: 35,
};
