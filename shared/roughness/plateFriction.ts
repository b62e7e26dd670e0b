import { roughnessFunction } from "./roughnessFunction";

/** Cf cannot rise above this however rough the wall: the roughness elements then stand out of the layer. */
const HIGHEST_FRICTION = 0.02;

/**
 * Friction coefficient of a turbulent layer without pressure gradient.
 * Smooth wall: Cf0 = 0.01013 / (log10 Re_theta - 1.02) - 0.00075 (Green, Weeks & Brooman 1977, ARC R&M 3791);
 * rough wall: sqrt(2/Cf) is lower by Delta U+, see roughnessFunction.ts.
 * @param ReTheta momentum-thickness Reynolds number, above 0; the smooth formula is for Re_theta above about 300
 * @param reynoldsRoughness Ue ks / nu on the local edge speed, 0 on a smooth wall
 */
export function plateFriction(ReTheta: number, reynoldsRoughness: number): number {
  const smooth = Math.min(HIGHEST_FRICTION, 0.01013 / Math.max(0.45, Math.log10(ReTheta) - 1.02) - 0.00075);
  if (!(reynoldsRoughness > 0)) return smooth;
  const lowest = Math.sqrt(2 / HIGHEST_FRICTION);
  const smoothRatio = Math.sqrt(2 / smooth);
  let ratio = smoothRatio;
  // ks+ = Ue ks / (nu Ue+) depends weakly on the answer: a few substitutions settle it to four digits.
  for (let i = 0; i < 4; i++) ratio = Math.max(lowest, smoothRatio - roughnessFunction(reynoldsRoughness / ratio));
  return 2 / (ratio * ratio);
}
