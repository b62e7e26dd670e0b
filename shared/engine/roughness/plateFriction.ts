import { LAYER_NUMBERS } from "../constants/layerNumbers";
import { roughnessFunction } from "./roughnessFunction";

/** Cf cannot rise above this however rough the wall: the roughness elements then stand out of the layer. */
const HIGHEST_FRICTION = LAYER_NUMBERS.highestFriction.value;
/** log10 Re_theta - 1.02 at which the smooth law gives that. */
const LEAST_LOGARITHM = 0.01013 / (HIGHEST_FRICTION + 0.00075);
const LOWEST_RATIO = Math.sqrt(2 / HIGHEST_FRICTION);

/**
 * Height / theta that sand grains cannot exceed in friction, however tall they stand: 1/ks_eff = 1/ks + 1/(2 theta).
 * Taller ones leave the layer whose logarithmic profile they would shift. That profile needs ks below a fortieth to a
 * sixth of the layer (Jimenez 2004, Annu. Rev. Fluid Mech. 36, 173; Flack & Schultz 2007, Phys. Fluids 19, 095104; from
 * memory), and a layer is 8 to 10 theta thick, so that the bound is of the order of theta; the factor 2 is fitted on the
 * mean drag and the separation of rough cylinders above their crisis.
 */
const TALLEST_GRAINS = LAYER_NUMBERS.tallestGrains.value;

/**
 * Friction coefficient of a turbulent layer without pressure gradient.
 * Smooth wall: Cf0 = 0.01013 / (log10 Re_theta - 1.02) - 0.00075 (Green, Weeks & Brooman 1977, ARC R&M 3791);
 * rough wall: sqrt(2/Cf) is lower by Delta U+, see roughnessFunction.ts, of grains that count for less than 2 theta.
 * @param ReTheta momentum-thickness Reynolds number, above 0; the smooth formula is for Re_theta above about 300
 * @param reynoldsRoughness Ue ks / nu on the local edge speed, 0 on a smooth wall
 */
export function plateFriction(ReTheta: number, reynoldsRoughness: number): number {
  let friction = smoothFriction(ReTheta);
  // ks+ = Ue ks sqrt(Cf/2) / nu depends weakly on the answer: a few substitutions settle it to four digits.
  if (reynoldsRoughness > 0) for (let i = 0; i < 5; i++) friction = roughFriction(ReTheta, reynoldsRoughness, friction);
  return friction;
}

/** One substitution towards {@link plateFriction} on a rough wall, from a nearby value of Cf; a march calls it step by step. */
export function roughFriction(ReTheta: number, reynoldsRoughness: number, nearby: number): number {
  const smooth = smoothFriction(ReTheta);
  const bounded = reynoldsRoughness / (1 + reynoldsRoughness / (TALLEST_GRAINS * ReTheta));
  // No shift on a smooth wall; asked in any case, so that the compiler takes it into the march that calls this.
  const ratio = Math.sqrt(2 / smooth) - roughnessFunction(bounded * Math.sqrt(nearby / 2));
  return ratio > LOWEST_RATIO ? 2 / (ratio * ratio) : HIGHEST_FRICTION;
}

function smoothFriction(ReTheta: number): number {
  return 0.01013 / Math.max(LEAST_LOGARITHM, Math.log(ReTheta) * Math.LOG10E - 1.02) - 0.00075;
}
