/**
 * Momentum-thickness Reynolds number at which distributed roughness turns a laminar layer.
 *
 * The form follows from Achenbach's (1977, Int. J. Heat Mass Transfer 20, 359) law for rough cylinders, critical
 * Re = 6000 (ks/D)^-1/2: with theta proportional to D / sqrt(Re) at the shoulder it reads
 * Re_theta = constant * (k/theta)^(-1/3) in the layer's own variables.
 * @param roughnessToThickness ks / theta, above 0
 * @param reynoldsRoughness Ue ks / nu on the local edge speed
 * @param constants the calibrated Re_theta at ks = theta and the roughness Reynolds number below which a wall acts as smooth
 * @returns Infinity where the wall acts as smooth
 */
export function roughTransition(
  roughnessToThickness: number,
  reynoldsRoughness: number,
  constants: { readonly roughTransition: number; readonly smoothWallLimit: number },
): number {
  if (!(reynoldsRoughness > constants.smoothWallLimit)) return Number.POSITIVE_INFINITY;
  return constants.roughTransition * Math.cbrt(1 / roughnessToThickness);
}
