import { LAYER_NUMBERS } from "../constants/layerNumbers";
import {
  SEPARATION_ENERGY_SHAPE,
  STAGNATION_ENERGY_SHAPE,
  STAGNATION_LAMBDA,
  similarClosure,
  stagnationLayer,
} from "./similarLayers";

/** A place where the layer leaves the wall for a short dip of the edge speed and comes back behind it. */
export interface LaminarDip {
  /** Fractional stations of separation and of the end of the dip, where the edge speed is made up again. */
  readonly separation: number;
  readonly recovery: number;
  /** theta sqrt(Re) / D, the same at both ends. */
  readonly thickness: number;
}

/** A laminar layer along a side, in quantities that do not depend on the Reynolds number. Arrays have shape [n]. */
export interface LaminarLayer {
  /** theta sqrt(Re) / D. */
  readonly thickness: Float64Array;
  /** lambda = theta^2 (dUe/ds) / nu. */
  readonly lambda: Float64Array;
  readonly shapeFactor: Float64Array;
  /** S = theta tau_w / (mu Ue); the friction coefficient is Cf = 2 S / Re_theta. */
  readonly shear: Float64Array;
  /** Short dips of the edge speed that the layer bridges, front to rear. */
  readonly dips: readonly LaminarDip[];
  /** Fractional station where the layer separates for good; Infinity when it does not. */
  readonly separation: number;
  /** theta sqrt(Re) / D there; NaN when the wall shear does not vanish. */
  readonly separationThickness: number;
  /** Distance / D beyond the last station at which H32 would reach separation at its last rate of fall; 0 when separated. */
  readonly remainingArc: number;
}

/** The laminar layer along a side from its edge speed: arc / D, speed / U and d(speed)/d(arc), shape [n] each. */
export type LaminarMethod = (
  arc: Readonly<Float64Array>,
  speed: Readonly<Float64Array>,
  gradient: Readonly<Float64Array>,
) => LaminarLayer;

/** Rate of fall of H32 per D below which a layer is taken as far from separation. */
const SLOWEST_FALL = 0.02;
/**
 * Largest pressure rise, over the dynamic pressure at separation, that a short bubble carries (Crabtree 1957, RAE
 * report Aero 2578, from memory).
 */
const CRABTREE_RISE = LAYER_NUMBERS.dipRise.value;
/** H32 of the layer that comes back behind a dip: that of a flat plate. */
const PLATE_ENERGY_SHAPE = LAYER_NUMBERS.restartEnergyShape.value;
/** Part of the mean rise of the speed over the first steps that the gradient it starts from has at least. */
const LEAST_RISE_SHARE = 0.5;
/** Substeps per memory length Ue theta^2 / nu of the layer: the closure relaxes about four times in it. */
const SUBSTEPS_PER_MEMORY = 4;

/**
 * Laminar layer by the momentum and energy integral equations, closed by the similar layers:
 *
 *     dT/ds   = 2 [S - (H + 2) lambda] / Ue - 2 T (dh/ds) / h     T = theta^2 Re, lambda = T dUe/ds
 *     dH32/ds = [D - H32 S + (H - 1) H32 lambda] / (Ue T)
 *
 * h is the spacing of neighbouring streamlines: 1 in plane flow, the distance from the axis along a body of revolution,
 * where the term is Mangler's (1948) transformation; Rott & Crabtree (1952), J. Aeronaut. Sci. 19, 553.
 *
 * The two-equation form goes back to Walz (1946) and Tani (1954), J. Aeronaut. Sci. 21, 487; the closure is in
 * similarLayers.ts. It separates Howarth's and the sine flow within 1 % of the exact solutions, where Thwaites'
 * single equation is 2.7 % late and 1.4 degrees early.
 * @param arc arc length from a stagnation point / D, shape [n], increasing from 0
 * @param speed edge speed / U, 0 at index 0 and above 0 after it, taken as linear over each step
 * @param gradient d(speed)/d(arc) at the stations
 * @param spacing spacing of neighbouring streamlines in any unit, above 0 after index 0; null in plane flow
 */
export function laminarLayer(
  arc: Readonly<Float64Array>,
  speed: Readonly<Float64Array>,
  gradient: Readonly<Float64Array>,
  spacing: Readonly<Float64Array> | null = null,
): LaminarLayer {
  if (arc.length < 3 || speed.length !== arc.length || gradient.length !== arc.length) {
    throw new RangeError(
      `arc has ${arc.length} values, speed ${speed.length} and gradient ${gradient.length}; all need the same number, 3 or more.`,
    );
  }
  const { lambda, energyShape } =
    spacing === null
      ? { lambda: STAGNATION_LAMBDA, energyShape: STAGNATION_ENERGY_SHAPE }
      : stagnationLayer((arc[1] * Math.log(spacing[2] / spacing[1])) / (arc[2] - arc[1]));
  // In the corner ahead of a floor contact the speed may lie level for a step: the layer then begins with the mean rise.
  const rise = Math.max(gradient[0], LEAST_RISE_SHARE * (speed[2] / arc[2]));
  return marchLaminar(arc, speed, gradient, 1, lambda / rise, energyShape, spacing);
}

/**
 * The same march from a given start, for instance behind a leading edge.
 * @param first station to start from; earlier stations take the start's values
 * @param thicknessSquared theta^2 Re / D^2 there, above 0
 * @param energyShape H32 there
 * @param spacing as for {@link laminarLayer}
 */
export function marchLaminar(
  arc: Readonly<Float64Array>,
  speed: Readonly<Float64Array>,
  gradient: Readonly<Float64Array>,
  first: number,
  thicknessSquared: number,
  energyShape: number,
  spacing: Readonly<Float64Array> | null = null,
): LaminarLayer {
  const count = arc.length;
  const thickness = new Float64Array(count);
  const lambda = new Float64Array(count);
  const shapeFactor = new Float64Array(count);
  const shear = new Float64Array(count);
  const closure = new Float64Array(3);
  let T = thicknessSquared;
  let H32 = energyShape;
  const dips: LaminarDip[] = [];
  let separation = Number.POSITIVE_INFINITY;
  let separationThickness = Number.NaN;
  let fall = 0;
  const record = (station: number): void => {
    similarClosure(H32, closure);
    thickness[station] = Math.sqrt(T);
    lambda[station] = T * gradient[station];
    shapeFactor[station] = closure[0];
    shear[station] = Math.max(0, closure[1]);
  };
  for (let i = 0; i <= first; i++) record(i);
  for (let i = first; i < count - 1; i++) {
    const step = arc[i + 1] - arc[i];
    if (separation === Number.POSITIVE_INFINITY) {
      const middleSpeed = (speed[i] + speed[i + 1]) / 2;
      const substeps = Math.min(400, Math.ceil((SUBSTEPS_PER_MEMORY * step) / (middleSpeed * T)));
      const h = step / substeps;
      const spread = spacing === null ? 0 : Math.log(spacing[i + 1] / spacing[i]) / step;
      // Shifts the linear gradient so that it adds up to the change of speed over the step.
      const shift = (speed[i + 1] - speed[i]) / step - (gradient[i] + gradient[i + 1]) / 2;
      for (let j = 0; j < substeps; j++) {
        const startWeight = j / substeps;
        const middleWeight = (j + 0.5) / substeps;
        const slope0 = shift + gradient[i] + startWeight * (gradient[i + 1] - gradient[i]);
        const slopeM = shift + gradient[i] + middleWeight * (gradient[i + 1] - gradient[i]);
        const Ue0 = speed[i] + startWeight * (speed[i + 1] - speed[i]);
        const UeM = speed[i] + middleWeight * (speed[i + 1] - speed[i]);
        similarClosure(H32, closure);
        const lambda0 = T * slope0;
        const TM = T + (h * (closure[1] - (closure[0] + 2) * lambda0)) / Ue0 - h * T * spread;
        const HM = H32 + (h / 2) * ((closure[2] - H32 * closure[1] + (closure[0] - 1) * H32 * lambda0) / (Ue0 * T));
        similarClosure(HM, closure);
        const lambdaM = TM * slopeM;
        const TNext = T + (2 * h * (closure[1] - (closure[0] + 2) * lambdaM)) / UeM - 2 * h * TM * spread;
        const change = (h * (closure[2] - HM * closure[1] + (closure[0] - 1) * HM * lambdaM)) / (UeM * TM);
        if (H32 + change <= SEPARATION_ENERGY_SHAPE) {
          const share = change < 0 ? Math.max(0, Math.min(1, (SEPARATION_ENERGY_SHAPE - H32) / change)) : 0;
          separation = i + (j + share) / substeps;
          T += share * (TNext - T);
          separationThickness = Math.sqrt(T);
          H32 = SEPARATION_ENERGY_SHAPE;
          const recovery = recoveryStation(speed, separation);
          if (recovery !== null) {
            dips.push({ separation, recovery, thickness: separationThickness });
            separation = Number.POSITIVE_INFINITY;
            separationThickness = Number.NaN;
            // The stations of the dip keep the thickness at separation; the march goes on behind it.
            for (i++; i < recovery; i++) record(i);
            H32 = PLATE_ENERGY_SHAPE;
            i--;
          }
          break;
        }
        fall = -change / h;
        T = TNext;
        H32 += change;
      }
    }
    record(i + 1);
  }
  const remainingArc =
    separation === Number.POSITIVE_INFINITY ? (H32 - SEPARATION_ENERGY_SHAPE) / Math.max(fall, SLOWEST_FALL) : 0;
  return { thickness, lambda, shapeFactor, shear, dips, separation, separationThickness, remainingArc };
}

/**
 * Where the edge speed has made up a dip that starts at separation; null when it does not, or when the pressure rises
 * further on the way than a short bubble carries.
 */
export function recoveryStation(speed: Readonly<Float64Array>, separation: number): number | null {
  const first = Math.floor(separation);
  const atSeparation = speed[first] + (separation - first) * (speed[first + 1] - speed[first]);
  const lowestAllowed = atSeparation * Math.sqrt(1 - CRABTREE_RISE);
  for (let j = first + 1; j < speed.length; j++) {
    if (speed[j] < lowestAllowed) return null;
    if (speed[j] >= atSeparation) return j - (speed[j] - atSeparation) / (speed[j] - speed[j - 1]);
  }
  return null;
}
