import type { Trip } from "../condition";
import { positionAtArc } from "../geometry/arcPosition";
import type { Side } from "../layer/sideStations";
import type { StationTrip } from "../layer/transition";
import type { PreparedSection } from "./preparedSection";
import type { SeparatedFlow } from "./separatedFlow";

/**
 * The trips of one side as fractional stations of a flow: a trip stands still on the body while the stagnation point,
 * and with it the numbering of the stations, moves.
 */
export function stationTrips(
  section: PreparedSection,
  flow: SeparatedFlow,
  side: Side,
  trips: readonly Trip[],
): StationTrip[] {
  const { nodes, referenceWidth } = section;
  const stations = side === "lower" ? flow.lower : flow.upper;
  const direction = side === "lower" ? 1 : -1;
  return trips
    .filter((trip) => trip.side === side)
    .map((trip) => {
      const walked = positionAtArc(nodes, trip.arcRatio * referenceWidth);
      const position =
        direction > 0 ? walked : positionAtArc(nodes, nodes.perimeter - trip.arcRatio * referenceWidth) - nodes.count;
      return { station: stationOfPosition(stations.position, position, direction), heightRatio: trip.heightRatio };
    });
}

/** Fractional station of a contour position; -1 when it lies on the other side of the stagnation point. */
function stationOfPosition(positions: Readonly<Float64Array>, position: number, direction: number): number {
  if (direction * (position - positions[0]) < 0) return -1;
  for (let i = 1; i < positions.length; i++) {
    if (direction * (positions[i] - position) >= 0) {
      return i - 1 + (position - positions[i - 1]) / (positions[i] - positions[i - 1]);
    }
  }
  return Number.POSITIVE_INFINITY;
}
