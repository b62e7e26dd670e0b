import type { CalibratedConstants } from "../constants/calibrated";
import { roughTransition } from "../roughness/roughTransition";
import { tripFires } from "../roughness/tripTransition";
import type { FlowCondition } from "../solve/condition";
import type { TransitionCause } from "../solve/solution";
import { abuGhannamShawTransition } from "./abuGhannamShaw";
import type { SideStations } from "./sideStations";

export interface AttachedTransition {
  /** Fractional station where the laminar layer ends. */
  readonly station: number;
  readonly cause: TransitionCause;
}

/** A trip on this side: fractional station and height / D. */
export interface StationTrip {
  readonly station: number;
  readonly heightRatio: number;
}

/**
 * First place where the attached laminar layer turns, by natural transition, roughness or a trip, whichever comes first.
 * Turbulence intensity counts on the local edge speed, as the fluctuation is carried along while the stream speeds up.
 * @param trips trips on this side
 * @returns null when the layer is laminar up to its separation or the last station
 */
export function attachedTransition(
  stations: SideStations,
  condition: FlowCondition,
  trips: readonly StationTrip[],
  constants: CalibratedConstants,
): AttachedTransition | null {
  const { reynolds, sandGrainRoughnessRatio: ks, turbulenceIntensity } = condition;
  const { count, speed, laminar } = stations;
  const { thickness, lambda, separation } = laminar;
  const root = Math.sqrt(reynolds);
  const last = Math.min(count - 1, Math.floor(separation));
  let found: AttachedTransition | null = null;
  let previousExcess = -1;
  for (let i = 1; i <= last; i++) {
    const ReTheta = speed[i] * thickness[i] * root;
    const natural = abuGhannamShawTransition(lambda[i], turbulenceIntensity / speed[i]);
    const rough =
      ks > 0
        ? roughTransition((ks * root) / thickness[i], speed[i] * ks * reynolds, constants)
        : Number.POSITIVE_INFINITY;
    const excess = ReTheta / Math.min(natural, rough) - 1;
    if (excess > 0) {
      const station = i - 1 + Math.max(0, -previousExcess) / (excess + Math.max(0, -previousExcess));
      found = { station, cause: rough < natural ? "roughness" : "natural" };
      break;
    }
    previousExcess = excess;
  }
  for (const trip of trips) {
    if (!(trip.station > 0 && trip.station <= Math.min(separation, count - 1))) continue;
    const i = Math.min(count - 2, Math.floor(trip.station));
    const edgeSpeed = speed[i] + (trip.station - i) * (speed[i + 1] - speed[i]);
    if (tripFires(edgeSpeed * trip.heightRatio * reynolds) && (found === null || trip.station < found.station)) {
      found = { station: trip.station, cause: "trip" };
    }
  }
  return found;
}
