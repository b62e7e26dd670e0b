import { problem, type Result, success } from "../../../result";

/** Fluid that moves along with a body, kg, along its axis (face-on) and across it (edge-on). */
export interface AddedMass {
  readonly faceOn: number;
  readonly edgeOn: number;
}

/**
 * Added mass / displaced mass of a spheroid, k = alpha / (2 - alpha), along and across its axis of revolution.
 * Sources: Lamb, Hydrodynamics, 6th ed. (1932), art. 114 (prolate), art. 114 and 373 (oblate); Lamb (1918), ARC R&M 623.
 * @param axisRatio length along the axis / diameter, above 0; 1 is the sphere, k = 1/2
 */
export function spheroidAddedMass(axisRatio: number): { readonly along: number; readonly across: number } {
  if (!(axisRatio > 0)) throw new RangeError(`axis ratio is ${axisRatio}; it must be above 0.`);
  const along = axialFactor(axisRatio);
  const across = (2 - along) / 2; // the three factors of an ellipsoid add up to 2
  return { along: along / (2 - along), across: across / (2 - across) };
}

/** gamma_0 of the axis; near the sphere by its series in 1 - ratio^2, where the closed forms cancel. */
function axialFactor(ratio: number): number {
  const eccentric = 1 - ratio * ratio;
  if (Math.abs(eccentric) < 1e-2) {
    // gamma_0 = ratio * integral of ds / ((ratio^2 + s)^(3/2) (1 + s)), expanded: 2 sum of n-th powers of eccentric.
    return [2 / 3, 4 / 15, 16 / 105, 32 / 315, 256 / 3465, 512 / 9009].reduce(
      (sum, factor, n) => sum + factor * eccentric ** n,
      0,
    );
  }
  if (eccentric > 0) {
    const e = Math.sqrt(eccentric);
    return (2 / eccentric) * (1 - (ratio / e) * Math.asin(e));
  }
  const e = Math.sqrt(1 - 1 / (ratio * ratio));
  return ((2 * (1 - e * e)) / e ** 3) * (0.5 * Math.log((1 + e) / (1 - e)) - e);
}

/**
 * Added mass of a puck by its solved flow where there is one, else as that of the spheroid with
 * its diameter and its volume. A thin disc so keeps its exact value face-on, 8/3 rho R^3 (Lamb 1932, art. 108). In open
 * water; nearness of a floor adds to it and is left out.
 * @param diameter     m, above 0
 * @param volume       displaced, m^3, above 0
 * @param fluidDensity kg/m^3, 0 or more
 * @param solved       added mass / displaced mass along and across the axis; null where it was not solved
 */
export function puckAddedMass(
  diameter: number,
  volume: number,
  fluidDensity: number,
  solved: { readonly along: number | null; readonly across: number | null } = { along: null, across: null },
): Result<AddedMass> {
  if (!(diameter > 0 && volume > 0 && fluidDensity >= 0)) {
    return problem("added-mass", "diameter and volume must be above 0 and the fluid's density 0 or more");
  }
  const axisRatio = (6 * volume) / (Math.PI * diameter ** 3);
  const { along, across } = spheroidAddedMass(axisRatio);
  return success({
    faceOn: (solved.along ?? along) * fluidDensity * volume,
    edgeOn: (solved.across ?? across) * fluidDensity * volume,
  });
}
