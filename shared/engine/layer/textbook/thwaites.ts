/** Thwaites' method for a laminar layer. Source: Thwaites (1949), Aeronautical Quarterly 1, 245-280. */

import { type LaminarDip, type LaminarLayer, recoveryStation } from "../laminarLayer";

/** Pressure-gradient parameter lambda = theta^2 (dUe/ds) / nu at which the layer separates. */
export const LAMINAR_SEPARATION_LAMBDA = -0.09;

/** theta^2 (dUe/ds) / nu at a plane stagnation point, from theta^2 = 0.075 nu / (dUe/ds). */
export const STAGNATION_LAMBDA = 0.075;

/** Rate of fall of lambda per D below which a layer is taken as far from separation. */
const SLOWEST_FALL = 0.03;

/**
 * Laminar layer along a side: theta^2 Re = 0.45 Ue^-6 * integral of Ue^5 ds, with lengths in D and speeds in U; Ue is
 * taken as linear over each step. It separates where lambda falls to -0.09, and bridges short dips as the engine's own
 * laminar layer does.
 * @param arc arc length from the stagnation point or leading edge / D, shape [n], increasing
 * @param speed edge speed / U, shape [n], above 0 after index 0; 0 at index 0 is a stagnation point
 * @param gradient d(speed)/d(arc) at the stations, shape [n]
 */
export function thwaitesLayer(
  arc: Readonly<Float64Array>,
  speed: Readonly<Float64Array>,
  gradient: Readonly<Float64Array>,
): LaminarLayer {
  const count = arc.length;
  if (count < 2 || speed.length !== count || gradient.length !== count) {
    throw new RangeError(
      `arc has ${count} values, speed ${speed.length} and gradient ${gradient.length}; all need the same number, 2 or more.`,
    );
  }
  const thickness = new Float64Array(count);
  const lambda = new Float64Array(count);
  const shapeFactor = new Float64Array(count);
  const shear = new Float64Array(count);
  const dips: LaminarDip[] = [];
  let separation = Number.POSITIVE_INFINITY;
  let separationThickness = Number.NaN;
  let squared = speed[0] === 0 ? STAGNATION_LAMBDA / gradient[0] : 0;
  let fall = 0;
  const record = (station: number, value: number): void => {
    thickness[station] = Math.sqrt(squared);
    lambda[station] = value;
    shapeFactor[station] = laminarShapeFactor(value);
    shear[station] = laminarShear(value);
  };
  record(0, squared * gradient[0]);
  for (let i = 1; i < count; i++) {
    if (separation < i) {
      record(i, LAMINAR_SEPARATION_LAMBDA);
      continue;
    }
    const before = squared;
    squared = thwaitesStep(before, speed[i - 1], speed[i], arc[i] - arc[i - 1]);
    const reached = squared * gradient[i];
    if (reached > LAMINAR_SEPARATION_LAMBDA) {
      fall = (lambda[i - 1] - reached) / (arc[i] - arc[i - 1]);
      record(i, reached);
      continue;
    }
    const share = (lambda[i - 1] - LAMINAR_SEPARATION_LAMBDA) / (lambda[i - 1] - reached);
    squared = before + share * (squared - before);
    const place = i - 1 + share;
    const recovery = recoveryStation(speed, place);
    if (recovery === null) {
      separation = place;
      separationThickness = Math.sqrt(squared);
    } else {
      dips.push({ separation: place, recovery, thickness: Math.sqrt(squared) });
      // The stations of the dip keep the thickness at separation; the layer goes on behind it.
      for (; i < recovery; i++) record(i, LAMINAR_SEPARATION_LAMBDA);
    }
    record(i, recovery === null ? LAMINAR_SEPARATION_LAMBDA : squared * gradient[i]);
  }
  const left = lambda[count - 1] - LAMINAR_SEPARATION_LAMBDA;
  const remainingArc = separation === Number.POSITIVE_INFINITY ? left / Math.max(fall, SLOWEST_FALL) : 0;
  return { thickness, lambda, shapeFactor, shear, dips, separation, separationThickness, remainingArc };
}

/** theta^2 Re at the end of a step over which the speed changes from a to b along a straight line. */
function thwaitesStep(squared: number, a: number, b: number, step: number): number {
  const a2 = a * a;
  const b2 = b * b;
  const integral = (step / 6) * (a + b) * (a2 * a2 + a2 * b2 + b2 * b2);
  return (squared * a2 * a2 * a2 + 0.45 * integral) / (b2 * b2 * b2);
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
