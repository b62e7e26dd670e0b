import { findSwitch } from "../../numerics/rootFinder";
import type { FlowCondition } from "../condition";
import type { CalibratedConstants } from "../constants/calibrated";
import { roughTransition } from "../roughness/roughTransition";
import { tripFires } from "../roughness/tripTransition";
import type { TransitionCause } from "../solution";
import { abuGhannamShawTransition } from "./abuGhannamShaw";
import type { SideStations } from "./sideStations";

export interface AttachedTransition {
  /** Fractional station where the laminar layer ends. */
  readonly station: number;
  readonly cause: TransitionCause;
}

/**
 * Re_theta at natural transition of lambda, turbulence intensity on the edge speed, and Re of the edge speed on the arc
 * from the stagnation point.
 */
export type NaturalCriterion = (lambda: number, turbulenceIntensity: number, reynoldsArc: number) => number;

/** Transition is found to this part of the way from one station to the next. */
const STATION_TOLERANCE = 1e-4;

/** A trip on this side: fractional station and height / D. */
export interface StationTrip {
  readonly station: number;
  readonly heightRatio: number;
}

/**
 * First place where the attached laminar layer turns, by natural transition, roughness or a trip, whichever comes first.
 * Turbulence intensity counts on the local edge speed, as the fluctuation is carried along while the stream speeds up.
 * @param trips trips on this side
 * @param naturalCriterion Abu-Ghannam & Shaw's unless another is given
 * @returns null when the layer is laminar up to its separation or the last station
 */
export function attachedTransition(
  stations: SideStations,
  condition: FlowCondition,
  trips: readonly StationTrip[],
  constants: CalibratedConstants,
  naturalCriterion: NaturalCriterion = abuGhannamShawTransition,
): AttachedTransition | null {
  const { reynolds, sandGrainRoughnessRatio: ks, turbulenceIntensity } = condition;
  const { arc, count, speed, laminar } = stations;
  const { thickness, lambda, separation, separationThickness } = laminar;
  const root = Math.sqrt(reynolds);
  const last = Math.min(count - 1, Math.floor(separation));
  const end = Math.min(count - 1, separation);
  const causeAt = (station: number): "natural" | "roughness" | null => {
    const i = Math.min(Math.floor(station), count - 2);
    const share = station - i;
    // The step in which the layer separates ends with its thickness there.
    const growth =
      i === last && end > last ? (separationThickness - thickness[i]) / (end - i) : thickness[i + 1] - thickness[i];
    const theta = thickness[i] + share * growth;
    const Ue = speed[i] + share * (speed[i + 1] - speed[i]);
    const s = arc[i] + share * (arc[i + 1] - arc[i]);
    const natural = naturalCriterion(
      lambda[i] + share * (lambda[i + 1] - lambda[i]),
      turbulenceIntensity / Ue,
      Ue * s * reynolds,
    );
    const rough =
      ks > 0 ? roughTransition((ks * root) / theta, Ue * ks * reynolds, constants) : Number.POSITIVE_INFINITY;
    if (!(Ue * theta * root > Math.min(natural, rough))) return null;
    return rough < natural ? "roughness" : "natural";
  };
  let found: AttachedTransition | null = null;
  for (let i = 1; i < end + 1 && found === null; i++) {
    const place = Math.min(i, end);
    const cause = causeAt(place);
    if (cause !== null) {
      const station = findSwitch((at) => causeAt(at) === null, i - 1, place, STATION_TOLERANCE).failing;
      found = { station, cause: causeAt(station) ?? cause };
    }
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
