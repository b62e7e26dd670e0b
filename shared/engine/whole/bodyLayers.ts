import { findSwitch } from "../../numerics/rootFinder";
import type { FlowCondition } from "../condition";
import { CALIBRATED } from "../constants/calibrated";
import { reattachmentDistance } from "../layer/bubble";
import { laminarShearLayerLength } from "../layer/sideLayer";
import { type SideStations, stationValue } from "../layer/sideStations";
import { attachedTransition, type StationTrip } from "../layer/transition";
import { lineStations } from "./lineStations";
import type { BodyEdges } from "./separationFamily";
import type { SurfaceLine } from "./surfaceLines";
import type { WholeBody } from "./wholeBody";

/** A streamline of the surface with the layer on it; lengths over `reference`. */
export interface BodyLine {
  readonly line: SurfaceLine;
  readonly stations: SideStations;
  /** m: the diameter on the rim, the thickness over an edge. */
  readonly reference: number;
}

/** Azimuth of a place from the front of the rim, rad. */
export function azimuthOf(x: number, y: number): number {
  return Math.atan2(Math.abs(y), -x);
}

/** The line round the rim as far as an azimuth, rad; null when it does not come there. */
export function rimLine({ diameter }: WholeBody, line: SurfaceLine, azimuth: number): BodyLine | null {
  let i = 1;
  while (i < line.count && azimuthOf(line.x[i], line.y[i]) < azimuth) i++;
  if (i >= line.count || i < 4) return null;
  const [before, after] = [azimuthOf(line.x[i - 1], line.y[i - 1]), azimuthOf(line.x[i], line.y[i])];
  const share = (azimuth - before) / (after - before);
  const end = line.arc[i - 1] + share * (line.arc[i] - line.arc[i - 1]);
  return { line, stations: lineStations(line, diameter, end), reference: diameter };
}

/** Azimuth at an arc of a rim's line / D. */
export function azimuthAtArc({ line, reference }: BodyLine, arc: number): number {
  const metres = arc * reference;
  let i = 1;
  while (i < line.count - 1 && line.arc[i] < metres) i++;
  const share = Math.min(1.5, (metres - line.arc[i - 1]) / (line.arc[i] - line.arc[i - 1]));
  const before = azimuthOf(line.x[i - 1], line.y[i - 1]);
  return before + share * (azimuthOf(line.x[i], line.y[i]) - before);
}

/**
 * A line over the upper edge and the face behind it, to the place where it leaves the face at the rear; null when it does
 * not go that way. With the stream's direction it can carry a long bubble.
 * @param tilt rad
 */
export function edgeLine(
  { diameter, thickness }: Pick<WholeBody, "diameter" | "thickness">,
  { upper }: BodyEdges,
  line: SurfaceLine,
  tilt: number,
): BodyLine | null {
  const latitude = (i: number) => Math.atan2(line.z[i], Math.hypot(line.x[i], line.y[i]));
  let onFace = 0;
  while (onFace < line.count && latitude(onFace) < upper) onFace++;
  let last = onFace;
  while (last < line.count - 1 && latitude(last + 1) > upper) last++;
  if (onFace >= line.count - 2 || last - onFace < 4) return null;
  const reference = Math.min(thickness, diameter);
  const stations = lineStations(line, reference, line.arc[last]);
  const outline = {
    nodes: { x: line.x, y: line.z.map((value) => -value) },
    sign: 1 as const,
    cosine: Math.cos(tilt) / reference,
    sine: -Math.sin(tilt) / reference,
    curvatureAhead: 0,
    parallelWake: null,
  };
  return { line, stations: { ...stations, outline }, reference };
}

/** Whether a layer turns before it leaves its wall or comes back behind a short bubble. */
export function layerStays(
  stations: SideStations,
  condition: FlowCondition,
  trips: readonly StationTrip[] = [],
): boolean {
  if (attachedTransition(stations, condition, trips, CALIBRATED) !== null) return true;
  const { separation } = stations.laminar;
  if (!Number.isFinite(separation)) return false;
  const laminarLength = laminarShearLayerLength(stations, separation, condition);
  const curvature = stationValue(stations.curvature, separation);
  return reattachmentDistance(laminarLength, curvature, CALIBRATED.reattachmentSlope) !== null;
}

/** Reynolds numbers between which a change of the layer is looked for. */
const SLOWEST = 1e3;
const FASTEST = 1e9;

/**
 * Reynolds number on the stations' reference length from which the layer stays, at a turbulence and roughness: the crisis
 * of a rim, the closing of an edge's bubble. Infinity when none up to 1e9.
 */
export function stayingReynolds(
  stations: SideStations,
  condition: Omit<FlowCondition, "reynolds">,
  trips: readonly StationTrip[] = [],
): number {
  const stays = (logarithm: number) => layerStays(stations, { ...condition, reynolds: Math.exp(logarithm) }, trips);
  if (stays(Math.log(SLOWEST))) return SLOWEST;
  if (!stays(Math.log(FASTEST))) return Number.POSITIVE_INFINITY;
  return Math.exp(findSwitch((at) => !stays(at), Math.log(SLOWEST), Math.log(FASTEST), 1e-3).failing);
}
