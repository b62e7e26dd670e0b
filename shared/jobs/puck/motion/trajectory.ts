import { findRoot } from "../../../numerics/rootFinder";
import type { IntegratedMotion } from "./integrate";

/** Where the energy went, J. The residual is what the integration lost, over the largest energy in play. */
export interface EnergyAudit {
  readonly kineticAtStart: number;
  readonly kineticAtEnd: number;
  /** Work of weight less buoyancy; positive when it drove the motion. */
  readonly weightWork: number;
  readonly dragLoss: number;
  readonly frictionLoss: number;
  readonly relativeResidual: number;
}

/** A motion at equal steps of time, arrays of shape [samples]. */
export interface Trajectory {
  /** s. */
  readonly time: Float64Array;
  /** Horizontal way, m. */
  readonly distance: Float64Array;
  /** Height above the floor or, for a sinking puck, above the start, m. */
  readonly height: Float64Array;
  /** m/s. */
  readonly speed: Float64Array;
  readonly ended: string;
  /** Time and speed at the asked distances; null where it did not get there. */
  readonly marks: readonly DistanceMark[];
  readonly energy: EnergyAudit;
}

export interface DistanceMark {
  readonly distance: number;
  readonly time: number | null;
  readonly speed: number | null;
}

/** What a state vector means. */
export interface StateReading {
  readonly distance: (state: readonly number[]) => number;
  readonly height: (state: readonly number[]) => number;
  readonly speed: (state: readonly number[]) => number;
}

/** @param samples 2 or more */
export function sampleTrajectory(
  motion: IntegratedMotion,
  reading: StateReading,
  samples: number,
  markDistances: readonly number[],
  energy: Omit<EnergyAudit, "relativeResidual">,
): Trajectory {
  if (!(samples >= 2)) throw new RangeError(`samples is ${samples}; it must be 2 or more.`);
  const time = Float64Array.from({ length: samples }, (_, i) => (motion.end * i) / (samples - 1));
  const states = Array.from(time, motion.stateAt);
  const balance =
    energy.kineticAtStart + energy.weightWork - energy.kineticAtEnd - energy.dragLoss - energy.frictionLoss;
  const scale = Math.max(energy.kineticAtStart, energy.kineticAtEnd, Math.abs(energy.weightWork), energy.dragLoss);
  return {
    time,
    distance: Float64Array.from(states, reading.distance),
    height: Float64Array.from(states, reading.height),
    speed: Float64Array.from(states, reading.speed),
    ended: motion.ended,
    marks: markDistances.map((distance) => mark(motion, reading, time, distance)),
    energy: { ...energy, relativeResidual: scale > 0 ? Math.abs(balance) / scale : 0 },
  };
}

/** The first passage of a distance, to the rounding error of the dense output. */
function mark(
  motion: IntegratedMotion,
  reading: StateReading,
  time: Readonly<Float64Array>,
  distance: number,
): DistanceMark {
  const index = time.findIndex((t) => reading.distance(motion.stateAt(t)) >= distance);
  if (index < 0) return { distance, time: null, speed: null };
  const beyond = (t: number) => reading.distance(motion.stateAt(t)) - distance;
  const at = index === 0 ? 0 : findRoot(beyond, time[index - 1], time[index]);
  return { distance, time: at, speed: reading.speed(motion.stateAt(at)) };
}
