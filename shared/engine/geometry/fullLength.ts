import { WAKE_NUMBERS } from "../constants/wakeNumbers";
import { highestAlong } from "./referenceWidth";
import type { SectionNodes } from "./sectionNodes";

/** Power of the local height: only where a section is nearly as high as its highest does it count as full. */
const FULLNESS_POWER = WAKE_NUMBERS.fullnessPower.value;
const STATIONS = 240;

/** Full length of a section behind stations along the stream; plain data made by {@link fullLengthTable}. */
export interface FullLengthTable {
  /** Stream coordinate of the foremost point, m, and distance between stations, m. */
  readonly start: number;
  readonly step: number;
  /** Full length behind each station, m, shape [n], falling to 0 at the rearmost point. */
  readonly behind: Float64Array;
  /** Greatest height at or behind each station, m, shape [n]. */
  readonly widestBehind: Float64Array;
  /** Height of the section at each station, m, shape [n]. */
  readonly height: Float64Array;
}

/**
 * Length of a section weighted by its fullness, the integral of (height / D)^8 along the stream from a station to the
 * rear: about the length over which the section is as high as it gets. A tapered tail adds little to it.
 * @param incidence angle of the stream direction to the x axis, rad
 * @param referenceWidth D, m
 */
export function fullLengthTable(nodes: SectionNodes, incidence: number, referenceWidth: number): FullLengthTable {
  const { count } = nodes;
  const cosine = Math.cos(incidence);
  const sine = Math.sin(incidence);
  const along = Float64Array.from({ length: count }, (_, i) => cosine * nodes.x[i] + sine * nodes.y[i]);
  const across = Float64Array.from({ length: count }, (_, i) => -sine * nodes.x[i] + cosine * nodes.y[i]);
  const start = along.reduce((low, value) => Math.min(low, value));
  const end = along.reduce((high, value) => Math.max(high, value));
  const step = (end - start) / (STATIONS - 1);
  const highest = new Float64Array(STATIONS).fill(Number.NEGATIVE_INFINITY);
  const lowest = new Float64Array(STATIONS).fill(Number.POSITIVE_INFINITY);
  for (let i = 0; i < count; i++) {
    const j = (i + 1) % count;
    const from = Math.min(along[i], along[j]);
    const to = Math.max(along[i], along[j]);
    for (let k = Math.ceil((from - start) / step - 1e-9); k <= Math.floor((to - start) / step + 1e-9); k++) {
      const weight = to > from ? (start + k * step - along[i]) / (along[j] - along[i]) : 0;
      const height = across[i] + weight * (across[j] - across[i]);
      highest[k] = Math.max(highest[k], height);
      lowest[k] = Math.min(lowest[k], height);
    }
  }
  const height = highest.map((top, k) => Math.max(0, top - lowest[k]));
  const widestBehind = new Float64Array(STATIONS);
  for (let k = STATIONS - 1; k >= 0; k--) {
    widestBehind[k] = Math.max(k < STATIONS - 1 ? widestBehind[k + 1] : 0, height[k]);
  }
  const fullness = height.map((extent) => (extent / referenceWidth) ** FULLNESS_POWER);
  const behind = new Float64Array(STATIONS);
  for (let k = STATIONS - 2; k >= 0; k--) behind[k] = behind[k + 1] + (step * (fullness[k] + fullness[k + 1])) / 2;
  return { start, step, behind, widestBehind, height };
}

/** Full length behind a stream coordinate, m. */
export function fullLengthBehind(table: FullLengthTable, streamCoordinate: number): number {
  const station = Math.max(0, Math.min(STATIONS - 1, (streamCoordinate - table.start) / table.step));
  const k = Math.min(STATIONS - 2, Math.floor(station));
  return table.behind[k] + (station - k) * (table.behind[k + 1] - table.behind[k]);
}

/** Height of the section at a stream coordinate, m; 0 behind its rear. */
export function heightAt(table: FullLengthTable, streamCoordinate: number): number {
  const station = Math.max(0, (streamCoordinate - table.start) / table.step);
  if (!(station < STATIONS - 1)) return 0;
  const k = Math.floor(station);
  return table.height[k] + (station - k) * (table.height[k + 1] - table.height[k]);
}

/** What stands behind a chord of a section, m: full length along the chord's normal, and the section's extent along the chord. */
export interface BehindChord {
  readonly fullLength: number;
  readonly extent: number;
}

/**
 * The full length behind the chord through two separation points, across it and over the section's extent along it. For
 * points that lie level across the stream it is the full length along the stream over D. At an incidence it keeps the
 * afterbody of a long section whose layers leave its front face, and an inclined plate, whose edges hold them, has none.
 * @param from, to the two points, m; the section behind lies on the right of the way from one to the other
 */
export function behindChord(
  nodes: SectionNodes,
  [fromX, fromY]: readonly [number, number],
  [toX, toY]: readonly [number, number],
): BehindChord {
  const chord = Math.hypot(toX - fromX, toY - fromY);
  const alongX = (toX - fromX) / chord;
  const alongY = (toY - fromY) / chord;
  const direction = Math.atan2(-alongX, alongY);
  const extent = highestAlong(nodes, alongX, alongY) + highestAlong(nodes, -alongX, -alongY);
  const table = fullLengthTable(nodes, direction, extent);
  const station = Math.cos(direction) * fromX + Math.sin(direction) * fromY;
  return { fullLength: fullLengthBehind(table, station), extent };
}

/** Greatest height behind a stream coordinate, m: at the stations of the table, which near a blunt tail stand far apart. */
export function widestBehindAt(table: FullLengthTable, streamCoordinate: number): number {
  const station = Math.ceil((streamCoordinate - table.start) / table.step);
  return station < STATIONS ? table.widestBehind[Math.max(0, station)] : 0;
}
