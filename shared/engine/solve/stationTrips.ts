import type { Trip } from "../condition";
import { positionAtArc } from "../geometry/arcPosition";
import type { Side, SideStations } from "../layer/sideStations";
import type { StationTrip } from "../layer/transition";
import type { PreparedSection } from "./preparedSection";

/**
 * The trips of one side as fractional stations: a trip stands still on the body while the stagnation point,
 * and with it the numbering of the stations, moves.
 */
export function stationTrips(
  section: PreparedSection,
  stations: SideStations,
  side: Side,
  trips: readonly Trip[],
): StationTrip[] {
  const { nodes, referenceWidth } = section;
  const direction = side === "lower" ? 1 : -1;
  // A trip's side is the section's own; a layer's is the stream's, which are two things where the stream comes from behind.
  const { position } = stations;
  const middle = (position[0] + position[position.length - 1]) / 2;
  return trips.map((trip) => {
    const walked = positionAtArc(nodes, (trip.side === "lower" ? 1 : -1) * trip.arcRatio * referenceWidth);
    const nearest = walked - nodes.count * Math.round((walked - middle) / nodes.count);
    return { station: stationOfPosition(position, nearest, direction), heightRatio: trip.heightRatio };
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
