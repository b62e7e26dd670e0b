import type { SideLayer } from "../layer/sideLayer";
import { stationOfArc, stationValue } from "../layer/sideStations";
import type { BodyLine } from "./bodyLayers";

/** Points of a turbulent layer as its march reports them: arc, theta, H, Cf of each in turn, lengths over the reference. */
export type MarchPoints = readonly number[];

/** Friction on the strip of surface between a line and its neighbour, per angle between them at the ring where they start. */
export interface StripFriction {
  /** Force downstream over the dynamic pressure, m^2. */
  readonly force: number;
  /** Of the strip, as far as the layer was followed, m^2. */
  readonly area: number;
}

/**
 * @param startRadius of the ring on which lines start, m
 * @param reynolds    on the line's reference length
 */
export function stripFriction(
  { line, stations, reference }: BodyLine,
  layer: SideLayer,
  turbulent: MarchPoints,
  reynolds: number,
  downstream: readonly [number, number, number],
  startRadius: number,
): StripFriction {
  const { laminar, arc, speed, count } = stations;
  const laminarEnd = Math.min(
    layer.bubble?.separationArc ?? layer.transitionArc ?? layer.separationArc,
    layer.separationArc,
  );
  /** Cf of the laminar layer, 2 S / Re_theta. */
  const laminarFriction = (station: number): number => {
    const ReTheta = stationValue(speed, station) * stationValue(laminar.thickness, station) * Math.sqrt(reynolds);
    return ReTheta > 0 ? (2 * stationValue(laminar.shear, station)) / ReTheta : 0;
  };
  const pointAt = (station: number) =>
    Math.min(line.count - 2, Math.max(1, Math.round(stationValue(stations.position, station))));
  /** Force per width, arc length and unit of Cf. */
  const pushAt = (station: number): number => {
    const i = pointAt(station);
    const [dx, dy, dz] = [line.x[i + 1] - line.x[i - 1], line.y[i + 1] - line.y[i - 1], line.z[i + 1] - line.z[i - 1]];
    const along = (dx * downstream[0] + dy * downstream[1] + dz * downstream[2]) / Math.hypot(dx, dy, dz);
    return stationValue(speed, station) ** 2 * along;
  };
  let [force, area] = [0, 0];
  const add = (station: number, Cf: number, step: number) => {
    const cell = line.spacing[pointAt(station)] * startRadius * step * reference;
    area += cell;
    force += Cf * pushAt(station) * cell;
  };
  for (let i = 2; i < count && arc[i] <= laminarEnd; i++) add(i - 0.5, laminarFriction(i - 0.5), arc[i] - arc[i - 1]);
  for (let i = 4; i < turbulent.length; i += 4) {
    const station = stationOfArc(stations, (turbulent[i] + turbulent[i - 4]) / 2);
    add(station, (turbulent[i + 3] + turbulent[i - 1]) / 2, turbulent[i] - turbulent[i - 4]);
  }
  return { force, area };
}

/** Mean friction of strips, weighted by their widths, rad, over the dynamic pressure. */
export function meanFriction(strips: readonly (StripFriction & { readonly width: number })[]): number {
  const area = strips.reduce((sum, strip) => sum + strip.width * strip.area, 0);
  return area > 0 ? strips.reduce((sum, strip) => sum + strip.width * strip.force, 0) / area : 0;
}
