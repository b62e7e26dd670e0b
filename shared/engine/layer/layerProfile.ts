import type { LayerProfile } from "../solution";
import type { SideLayer } from "./sideLayer";
import { type SideStations, stationOfArc, stationValue } from "./sideStations";
import { SEPARATION_SHAPE_FACTOR } from "./similarLayers";

const LAMINAR = 0;
const BUBBLE = 1;
const TURBULENT = 2;

/** Points of a turbulent layer as its march reported them: arc, theta, H, Cf of each in turn, shape [4 n]. */
export type TurbulentPoints = readonly number[];

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
  const laminarEnd = Math.min(
    layer.bubble?.separationArc ?? layer.transitionArc ?? layer.separationArc,
    layer.separationArc,
  );
  let laminarCount = 0;
  while (laminarCount < stations.count && stations.arc[laminarCount] < laminarEnd) laminarCount++;
  const reattached = layer.bubble !== null && layer.bubble.reattachmentArc < layer.separationArc;
  const turbulentCount = turbulent.length / 4;
  const count = laminarCount + 1 + (reattached ? 2 : 0) + turbulentCount;
  const profile = {
    arc: new Float64Array(count),
    edgeSpeed: new Float64Array(count),
    momentumThickness: new Float64Array(count),
    shapeFactor: new Float64Array(count),
    skinFriction: new Float64Array(count),
    layerKind: new Uint8Array(count),
  };
  let row = 0;
  const put = (kind: number, arc: number, speed: number, theta: number, H: number, Cf: number): void => {
    profile.arc[row] = arc;
    profile.edgeSpeed[row] = speed;
    profile.momentumThickness[row] = theta;
    profile.shapeFactor[row] = H;
    profile.skinFriction[row] = Cf;
    profile.layerKind[row] = kind;
    row++;
  };
  const putLaminar = (station: number): void => {
    const { laminar } = stations;
    const speed = stationValue(stations.speed, station);
    const theta = stationValue(laminar.thickness, station) / Math.sqrt(reynolds);
    const ReTheta = speed * theta * reynolds;
    const friction = ReTheta > 0 ? (2 * stationValue(laminar.shear, station)) / ReTheta : 0;
    put(
      LAMINAR,
      stationValue(stations.arc, station),
      speed,
      theta,
      stationValue(laminar.shapeFactor, station),
      friction,
    );
  };
  for (let i = 0; i < laminarCount; i++) putLaminar(i);
  putLaminar(stationOfArc(stations, laminarEnd));
  if (reattached && layer.bubble !== null) {
    const { separationArc, reattachmentArc } = layer.bubble;
    const before = profile.momentumThickness[row - 1];
    const after = turbulentCount > 0 ? turbulent[1] : before;
    put(BUBBLE, separationArc, speedAt(stations, separationArc), before, SEPARATION_SHAPE_FACTOR, 0);
    put(BUBBLE, reattachmentArc, speedAt(stations, reattachmentArc), after, SEPARATION_SHAPE_FACTOR, 0);
  }
  for (let i = 0; i < turbulent.length; i += 4) {
    put(TURBULENT, turbulent[i], speedAt(stations, turbulent[i]), turbulent[i + 1], turbulent[i + 2], turbulent[i + 3]);
  }
  return profile;
}

function speedAt(stations: SideStations, arc: number): number {
  return stationValue(stations.speed, stationOfArc(stations, arc));
}
