import { problem, type Result, success } from "../../../result";
import { integrateMotion, type Rates } from "./integrate";
import { checkBody, type DragAreaAtSpeed, type MotionBody, type MotionSampling } from "./motionBody";
import { sampleTrajectory, type Trajectory } from "./trajectory";

/** Force areas, m^2, at a speed, m/s, and a tilt between mid-plane and stream, rad, 0 to pi/2. */
export type TiltedForceAreas = (
  speed: number,
  tilt: number,
) => { readonly normal: number; readonly tangential: number };

/**
 * How the puck lies while it flies. "edgeAlongPath": its mid-plane follows the path. "fixed": spin holds its mid-plane at
 * an angle to the horizontal (front up positive), so that it can glide or stall; forces along and across the mid-plane.
 */
export type FlickAttitude =
  | { readonly kind: "edgeAlongPath"; readonly dragArea: DragAreaAtSpeed }
  | { readonly kind: "fixed"; readonly pitch: number; readonly forceAreas: TiltedForceAreas };

export interface FlickStart {
  /** m/s, above 0. */
  readonly speed: number;
  /** Angle above the horizontal, rad, -pi/2 to pi/2. */
  readonly elevation: number;
  /** Height above the floor, m, above 0. */
  readonly height: number;
  /** Depth of the water, m, above height. */
  readonly waterDepth: number;
}

export interface FlickResult {
  readonly trajectory: Trajectory;
  /** Horizontal distance at the end, m. */
  readonly range: number;
  /** Greatest height above the floor on the sampled path, m. */
  readonly greatestHeight: number;
  /** s. */
  readonly flightTime: number;
}

/**
 * A puck flicked off the floor into the water, until it is back on the floor or reaches the surface, in one vertical
 * plane. Added mass edge-on and, with a fixed attitude, face-on; the moments that would turn the puck are left out.
 * @returns ended "floor", "surface" or "time"
 */
export function flickThroughWater(
  body: MotionBody,
  attitude: FlickAttitude,
  start: FlickStart,
  sampling: MotionSampling,
): Result<FlickResult> {
  const checked = checkBody(body, sampling);
  if (!checked.ok) return checked;
  const { speed, elevation, height, waterDepth } = start;
  if (!(speed > 0)) return problem("motion", `speed is ${speed} m/s; it must be above 0`, "speed");
  if (!(Math.abs(elevation) <= Math.PI / 2))
    return problem("motion", "elevation must be -90 to 90 degrees", "elevation");
  if (!(height > 0 && waterDepth > height)) {
    return problem(
      "motion",
      `height ${height} m must be above 0 and below the water's depth, ${waterDepth} m`,
      "height",
    );
  }
  // State: x, z, speed along and across the mid-plane's direction (the path's axes when it follows the path), drag loss.
  const pitch = attitude.kind === "fixed" ? attitude.pitch : 0;
  const [c, s] = [Math.cos(pitch), Math.sin(pitch)];
  const inertiaAlong = body.mass + body.addedMassEdgeOn;
  const inertiaAcross = attitude.kind === "fixed" ? body.mass + body.addedMassFaceOn : inertiaAlong;
  const forceAreas: TiltedForceAreas =
    attitude.kind === "fixed" ? attitude.forceAreas : (v, tilt) => alongPath(attitude.dragArea(v), tilt);
  const rates: Rates = (_time, [, , along, across], out) => {
    const v = Math.hypot(along, across);
    const areas = forceAreas(v, Math.atan2(Math.abs(across), Math.abs(along)));
    const pressure = 0.5 * body.fluidDensity * v * v;
    const forceAlong = pressure * areas.tangential * Math.sign(along);
    const forceAcross = pressure * areas.normal * Math.sign(across);
    out[0] = along * c - across * s;
    out[1] = along * s + across * c;
    out[2] = -(body.weightInFluid * s + forceAlong) / inertiaAlong;
    out[3] = -(body.weightInFluid * c + forceAcross) / inertiaAcross;
    out[4] = forceAlong * along + forceAcross * across;
  };
  const kinetic = ([, , along, across]: readonly number[]) =>
    0.5 * (inertiaAlong * along * along + inertiaAcross * across * across);
  const first = [0, height, speed * Math.cos(elevation - pitch), speed * Math.sin(elevation - pitch), 0];
  const motion = integrateMotion(rates, first, sampling.duration, [
    { name: "floor", value: (state) => state[1] },
    { name: "surface", value: (state) => waterDepth - state[1] },
  ]);
  if (!motion.ok) return motion;
  const last = motion.value.stateAt(motion.value.end);
  const reading = {
    distance: (state: readonly number[]) => state[0],
    height: (state: readonly number[]) => state[1],
    speed: (state: readonly number[]) => Math.hypot(state[2], state[3]),
  };
  const trajectory = sampleTrajectory(motion.value, reading, sampling.samples, sampling.markDistances ?? [], {
    kineticAtStart: kinetic(first),
    kineticAtEnd: kinetic(last),
    weightWork: body.weightInFluid * (height - last[1]),
    dragLoss: last[4],
    frictionLoss: 0,
  });
  const greatestHeight = trajectory.height.reduce((most, z) => Math.max(most, z), height);
  return success({ trajectory, range: last[0], greatestHeight, flightTime: motion.value.end });
}

/** Drag against the velocity, split along and across fixed axes. */
function alongPath(area: number, tilt: number) {
  return { normal: area * Math.sin(tilt), tangential: area * Math.cos(tilt) };
}
