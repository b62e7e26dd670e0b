/** Thwaites' method for a laminar layer. Source: Thwaites (1949), Aeronautical Quarterly 1, 245-280. */

/** Pressure-gradient parameter lambda = theta^2 (dUe/ds) / nu at which the layer separates. */
export const LAMINAR_SEPARATION_LAMBDA = -0.09;

/** theta^2 (dUe/ds) / nu at a plane stagnation point, from theta^2 = 0.075 nu / (dUe/ds). */
export const STAGNATION_LAMBDA = 0.075;

/**
 * Squared momentum thickness * Reynolds number along a side: theta^2 = 0.45 Ue^-6 * integral of Ue^5 ds / Re, with
 * lengths in D and speeds in U; Ue is taken as linear over each step.
 * @param arc arc length from the stagnation point or leading edge / D, shape [n], increasing
 * @param speed edge speed / U, shape [n], above 0 after index 0; 0 at index 0 is a stagnation point
 * @returns theta^2 Re / D^2, shape [n]
 */
export function thwaitesThickness(arc: Readonly<Float64Array>, speed: Readonly<Float64Array>): Float64Array {
  if (arc.length < 2 || speed.length !== arc.length) {
    throw new RangeError(
      `arc has ${arc.length} values and speed ${speed.length}; both need the same number, 2 or more.`,
    );
  }
  const squared = new Float64Array(arc.length);
  let integral = 0;
  for (let i = 1; i < arc.length; i++) {
    const a = speed[i - 1];
    const b = speed[i];
    const a2 = a * a;
    const b2 = b * b;
    integral += ((arc[i] - arc[i - 1]) / 6) * (a + b) * (a2 * a2 + a2 * b2 + b2 * b2);
    squared[i] = (0.45 * integral) / (b2 * b2 * b2);
  }
  if (speed[0] === 0) squared[0] = squared[1];
  return squared;
}

/**
 * Shape factor H of the laminar layer, White's fit to Thwaites' table (White, Viscous Fluid Flow, 3rd ed., eq. 4-137).
 * @param lambda theta^2 (dUe/ds) / nu; held at the ends of [-0.09, 0.25]
 */
export function laminarShapeFactor(lambda: number): number {
  const z = 0.25 - Math.max(LAMINAR_SEPARATION_LAMBDA, Math.min(0.25, lambda));
  return 2 + z * (4.14 + z * (-83.5 + z * (854 + z * (-3337 + z * 4576))));
}

/**
 * Shear parameter S = theta tau / (mu Ue), White's fit to Thwaites' table, S = (lambda + 0.09)^0.62; the friction
 * coefficient is Cf = 2 S / Re_theta.
 * @param lambda held at the ends of [-0.09, 0.25]
 */
export function laminarShear(lambda: number): number {
  return (Math.max(LAMINAR_SEPARATION_LAMBDA, Math.min(0.25, lambda)) - LAMINAR_SEPARATION_LAMBDA) ** 0.62;
}
