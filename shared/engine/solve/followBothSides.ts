import type { FlowCondition } from "../condition";
import type { StationSink } from "../layer/lagEntrainmentMarch";
import { followSide, type SideLayer } from "../layer/sideLayer";
import type { Side, SideStations } from "../layer/sideStations";
import type { StationTrip } from "../layer/transition";
import type { PreparedSection } from "./preparedSection";
import type { SeparatedFlow } from "./separatedFlow";
import { stationTrips } from "./stationTrips";

const noTrips: readonly StationTrip[] = [];

/**
 * The layer along the stations of one side, the section's trips put on them.
 * @param sink receives the turbulent part step by step, when it is wanted
 */
export function followStations(
  section: PreparedSection,
  condition: FlowCondition,
  stations: SideStations,
  side: Side,
  sink?: StationSink,
): SideLayer {
  const trips = condition.trips?.length ? stationTrips(section, stations, side, condition.trips) : noTrips;
  return followSide(stations, condition, trips, section.constants, sink, section.layerMethod);
}

/** The layer of one side of a flow, see {@link followStations}. */
export function followOneSide(
  section: PreparedSection,
  condition: FlowCondition,
  flow: SeparatedFlow,
  side: Side,
  sink?: StationSink,
): SideLayer {
  return followStations(section, condition, side === "lower" ? flow.lower : flow.upper, side, sink);
}

/** The layers of both sides of a flow. */
export function followBothSides(
  section: PreparedSection,
  condition: FlowCondition,
  flow: SeparatedFlow,
): { readonly lower: SideLayer; readonly upper: SideLayer } {
  return {
    lower: followOneSide(section, condition, flow, "lower"),
    upper: followOneSide(section, condition, flow, "upper"),
  };
}
