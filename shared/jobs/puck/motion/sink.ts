import { findRoot } from "../../../numerics/rootFinder";
import { problem, type Result, success } from "../../../result";
import { integrateMotion } from "./integrate";
import { checkBody, type DragAreaAtSpeed, type MotionBody, type MotionSampling } from "./motionBody";
import { sampleTrajectory, type Trajectory } from "./trajectory";

export type SinkAttitude = "faceOn" | "edgeOn";

/**
 * A puck let go in still water that keeps its attitude: (m + added mass) dv/dt = W - rho A(v) v^2 / 2.
 * A real puck may flutter or tumble, which is not modelled.
 * @param dragArea of the same attitude
 * @param depth    way to the floor, m, above 0
 * @returns height from 0 downwards; ended "floor" or "time"
 */
export function sinkToFloor(
  body: MotionBody,
  attitude: SinkAttitude,
  dragArea: DragAreaAtSpeed,
  depth: number,
  sampling: MotionSampling,
): Result<Trajectory> {
  const checked = checkBody(body, sampling);
  if (!checked.ok) return checked;
  if (!(depth > 0)) return problem("motion", `depth is ${depth} m; it must be above 0`, "depth");
  if (!(body.weightInFluid > 0)) return problem("motion", "the puck floats: it does not sink", "weight");
  const inertia = body.mass + (attitude === "faceOn" ? body.addedMassFaceOn : body.addedMassEdgeOn);
  const drag = (v: number) => 0.5 * body.fluidDensity * dragArea(Math.abs(v)) * v * Math.abs(v);
  const motion = integrateMotion(
    (_time, [, v], rates) => {
      rates[0] = v;
      rates[1] = (body.weightInFluid - drag(v)) / inertia;
      rates[2] = drag(v) * v;
    },
    [0, 0, 0],
    sampling.duration,
    [{ name: "floor", value: ([fallen]) => depth - fallen }],
  );
  if (!motion.ok) return motion;
  const [fallen, v, dragLoss] = motion.value.stateAt(motion.value.end);
  const reading = {
    distance: () => 0,
    height: (state: readonly number[]) => -state[0],
    speed: (state: readonly number[]) => state[1],
  };
  return success(
    sampleTrajectory(motion.value, reading, sampling.samples, [], {
      kineticAtStart: 0,
      kineticAtEnd: 0.5 * inertia * v * v,
      weightWork: body.weightInFluid * fallen,
      dragLoss,
      frictionLoss: 0,
    }),
  );
}

/**
 * All speeds, m/s, at which drag equals weight in water, rising. A drag crisis can give three; a puck sinking from rest
 * comes to the lowest. Looked for on 400 logarithmic steps between the two speeds and refined.
 */
export function terminalSpeeds(
  weightInFluid: number,
  fluidDensity: number,
  dragArea: DragAreaAtSpeed,
  lowestSpeed = 1e-3,
  highestSpeed = 100,
): number[] {
  if (!(weightInFluid > 0 && fluidDensity > 0)) {
    throw new RangeError(`weight ${weightInFluid} N and density ${fluidDensity} kg/m3 must both be above 0.`);
  }
  const excess = (v: number) => 0.5 * fluidDensity * dragArea(v) * v * v - weightInFluid;
  const speeds = Array.from({ length: 401 }, (_, i) => lowestSpeed * (highestSpeed / lowestSpeed) ** (i / 400));
  return speeds.slice(1).flatMap((upper, i) => {
    const endValues: [number, number] = [excess(speeds[i]), excess(upper)];
    if (endValues[0] <= 0 === endValues[1] <= 0) return [];
    return [findRoot(excess, speeds[i], upper, { endValues })];
  });
}
