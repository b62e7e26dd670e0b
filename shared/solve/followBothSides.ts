import { followSide, type SideLayer } from "../layer/sideLayer";
import type { Side } from "../layer/sideStations";
import type { FlowCondition } from "./condition";
import type { PreparedSection } from "./prepareSection";
import type { SeparatedFlow } from "./separatedFlow";
import { stationTrips } from "./stationTrips";

/** The layer of one side of a flow, its trips put on its stations. */
export function followOneSide(
  section: PreparedSection,
  condition: FlowCondition,
  flow: SeparatedFlow,
  side: Side,
): SideLayer {
  const trips = condition.trips?.length ? stationTrips(section, flow, side, condition.trips) : [];
  const stations = side === "lower" ? flow.lower : flow.upper;
  return followSide(stations, condition, trips, section.constants);
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
