import { problem, type Result, success } from "../../../result";

/** The part of a puck and its fluid that its motion needs; plain numbers. */
export interface MotionBody {
  /** kg. */
  readonly mass: number;
  /** kg, from puckAddedMass. */
  readonly addedMassEdgeOn: number;
  readonly addedMassFaceOn: number;
  /** Weight less buoyancy, N. */
  readonly weightInFluid: number;
  /** kg/m^3. */
  readonly fluidDensity: number;
}

/** Drag / dynamic pressure, m^2, at a speed, m/s: drag from a curve over the Reynolds number, not a constant. */
export type DragAreaAtSpeed = (speed: number) => number;

export interface MotionSampling {
  /** Longest time that is followed, s. */
  readonly duration: number;
  /** Points of the result, 2 or more. */
  readonly samples: number;
  /** Distances, m, at which time and speed are wanted. */
  readonly markDistances?: readonly number[];
}

export function checkBody(body: MotionBody, sampling: MotionSampling): Result<null> {
  if (!(body.mass > 0)) return problem("motion", `mass is ${body.mass} kg; it must be above 0`, "mass");
  if (!(body.addedMassEdgeOn >= 0 && body.addedMassFaceOn >= 0)) {
    return problem("motion", "added masses must be 0 or more", "addedMass");
  }
  if (!(body.fluidDensity >= 0)) {
    return problem("motion", `fluid density is ${body.fluidDensity} kg/m3; it must be 0 or more`, "fluidDensity");
  }
  if (!Number.isFinite(body.weightInFluid)) return problem("motion", "weight in the fluid is not a number", "weight");
  if (!(Number.isInteger(sampling.samples) && sampling.samples >= 2 && sampling.samples <= 100_000)) {
    return problem("motion", `samples is ${sampling.samples}; it must be a whole number from 2 to 100000`, "samples");
  }
  return success(null);
}
