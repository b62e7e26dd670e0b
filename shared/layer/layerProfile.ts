import type { LayerProfile } from "../solve/solution";
import type { SideLayer } from "./sideLayer";
import { type SideStations, stationOfArc, stationValue } from "./sideStations";
import { SEPARATION_SHAPE_FACTOR } from "./similarLayers";

const LAMINAR = 0;
const BUBBLE = 1;
const TURBULENT = 2;

/** Points of a turbulent layer as its march reported them; [arc, theta, H, Cf] each. */
export type TurbulentPoints = readonly (readonly [number, number, number, number])[];

/**
 * The layer along a side as one table, laminar stations first, then the bubble's two ends, then the turbulent layer.
 * @param reynolds U D / nu
 */
export function layerProfile(
  stations: SideStations,
  layer: SideLayer,
  turbulent: TurbulentPoints,
  reynolds: number,
): LayerProfile {
  const root = Math.sqrt(reynolds);
  const laminarEnd = layer.bubble?.separationArc ?? layer.transitionArc ?? layer.separationArc;
  const lastLaminarArc = Math.min(laminarEnd, layer.separationArc);
  const rows: number[][] = [];
  for (let i = 0; i < stations.count && stations.arc[i] < lastLaminarArc; i++) {
    rows.push(laminarRow(stations, i, root));
  }
  rows.push(laminarRow(stations, stationOfArc(stations, lastLaminarArc), root));
  if (layer.bubble !== null && layer.bubble.reattachmentArc < layer.separationArc) {
    const { separationArc, reattachmentArc } = layer.bubble;
    for (const arc of [separationArc, reattachmentArc]) {
      const station = stationOfArc(stations, arc);
      const theta = turbulent.length > 0 && arc === reattachmentArc ? turbulent[0][1] : rows[rows.length - 1][2];
      rows.push([arc, stationValue(stations.speed, station), theta, SEPARATION_SHAPE_FACTOR, 0, BUBBLE]);
    }
  }
  for (const [arc, theta, H, Cf] of turbulent) {
    rows.push([arc, stationValue(stations.speed, stationOfArc(stations, arc)), theta, H, Cf, TURBULENT]);
  }
  const column = (index: number) => Float64Array.from(rows, (row) => row[index]);
  return {
    arc: column(0),
    edgeSpeed: column(1),
    momentumThickness: column(2),
    shapeFactor: column(3),
    skinFriction: column(4),
    layerKind: Uint8Array.from(rows, (row) => row[5]),
  };
}

function laminarRow(stations: SideStations, station: number, root: number): number[] {
  const { laminar } = stations;
  const speed = stationValue(stations.speed, station);
  const theta = stationValue(laminar.thickness, station) / root;
  const ReTheta = speed * theta * root * root;
  const friction = ReTheta > 0 ? (2 * stationValue(laminar.shear, station)) / ReTheta : 0;
  return [
    stationValue(stations.arc, station),
    speed,
    theta,
    stationValue(laminar.shapeFactor, station),
    friction,
    LAMINAR,
  ];
}
