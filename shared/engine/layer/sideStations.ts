import { intervalAt } from "../../numerics/tableLookup";
import { arcAtPosition } from "../geometry/arcPosition";
import type { SectionNodes } from "../geometry/sectionNodes";
import { type LaminarLayer, type LaminarMethod, laminarLayer } from "./laminarLayer";
import type { SideOutline } from "./sideOutline";

/**
 * One side of a section from the front stagnation point to an assumed separation point, with the laminar layer on it.
 * Nothing here depends on the Reynolds number: the laminar layer scales with 1 / sqrt(Re). Arrays have shape [count].
 */
export interface SideStations {
  readonly count: number;
  /** Arc length from the stagnation point / D. */
  readonly arc: Float64Array;
  /** Position on the contour, node steps from the nose, counter-clockwise (running down on the upper side). */
  readonly position: Float64Array;
  /** Edge speed / U, 0 at the stagnation point. */
  readonly speed: Float64Array;
  /** d(speed)/d(arc), 1/D in units of U. */
  readonly gradient: Float64Array;
  /** Curvature of the wall * D, positive where convex. */
  readonly curvature: Float64Array;
  /** Spacing of neighbouring streamlines in any unit; null in plane flow, where it does not change. */
  readonly spacing: Float64Array | null;
  /** The laminar layer, as far as it stays attached. */
  readonly laminar: LaminarLayer;
  /** The section and the stream that the stations lie in; without it no long bubble is looked for. */
  readonly outline?: SideOutline;
}

export type Side = "upper" | "lower";

/** Nodes nearer than this to an end point (in node steps) are left out, so that no step is so short that gradients turn to noise. */
const SHORTEST_END_STEP = 0.5;

/**
 * Position of the front stagnation point: where the counter-clockwise surface velocity turns from negative (upper
 * side) to positive (lower side) on the wetted contour.
 * @param velocity counter-clockwise surface velocity / U, shape [nodes.count]
 * @returns node steps from the nose, in (upper - count, lower); null when the velocity does not change sign there
 */
export function stagnationPosition(velocity: Readonly<Float64Array>, lower: number, upper: number): number | null {
  const count = velocity.length;
  const last = Math.floor(lower);
  for (let j = Math.ceil(upper) - count; j < last; j++) {
    const a = velocity[((j % count) + count) % count];
    const b = velocity[(((j + 1) % count) + count) % count];
    if (a <= 0 && b > 0) return j + a / (a - b);
  }
  return null;
}

/**
 * Stations of one side for a solved wake flow.
 * @param velocity counter-clockwise surface velocity / U at the nodes
 * @param stagnation position of the front stagnation point, as {@link stagnationPosition} gives it
 * @param separation assumed separation position on this side, node steps; above `stagnation` on the lower side, below stagnation + count on the upper
 * @param separationSpeed speed / U at separation
 * @param referenceWidth D, m
 * @param laminarMethod the engine's own method unless another is given
 * @param incidence angle of the stream direction to the x axis, rad
 * @param parallelWake see {@link SideOutline}
 */
export function sideStations(
  nodes: SectionNodes,
  velocity: Readonly<Float64Array>,
  side: Side,
  stagnation: number,
  separation: number,
  separationSpeed: number,
  referenceWidth: number,
  laminarMethod: LaminarMethod = laminarLayer,
  incidence = 0,
  parallelWake: SideOutline["parallelWake"] = null,
): SideStations {
  const count = nodes.count;
  const direction = side === "lower" ? 1 : -1;
  const origin = stagnation;
  const end = side === "lower" ? separation : separation - count;
  const first = side === "lower" ? Math.ceil(origin + SHORTEST_END_STEP) : Math.floor(origin - SHORTEST_END_STEP);
  const last = side === "lower" ? Math.floor(end - SHORTEST_END_STEP) : Math.ceil(end + SHORTEST_END_STEP);
  const inner = Math.max(0, direction * (last - first) + 1);
  const size = inner + 2;
  const position = new Float64Array(size);
  const arc = new Float64Array(size);
  const speed = new Float64Array(size);
  const curvature = new Float64Array(size);
  const originArc = arcAtPosition(nodes, origin);
  position[0] = origin;
  for (let i = 0; i < inner; i++) {
    const j = first + direction * i;
    const node = ((j % count) + count) % count;
    position[i + 1] = j;
    arc[i + 1] = distanceAlong(nodes, originArc, nodes.arc[node], direction) / referenceWidth;
    speed[i + 1] = direction * velocity[node];
    curvature[i + 1] = nodes.curvature[node] * referenceWidth;
  }
  position[size - 1] = end;
  arc[size - 1] = distanceAlong(nodes, originArc, arcAtPosition(nodes, end), direction) / referenceWidth;
  speed[size - 1] = separationSpeed;
  curvature[0] = curvature[1];
  curvature[size - 1] = curvatureAt(nodes, end) * referenceWidth;
  // Speeds below this appear only where a contour folds inward; the layer has separated before.
  for (let i = 1; i < size; i++) if (!(speed[i] > 1e-3)) speed[i] = 1e-3;

  const gradient = gradientAlong(nodes, velocity, position, referenceWidth);
  const laminar = laminarMethod(arc, speed, gradient);
  const outline: SideOutline = {
    nodes,
    sign: direction,
    curvatureAhead:
      nodes.curvature[wrappedNode(direction > 0 ? Math.floor(end) + 1 : Math.ceil(end) - 1, count)] * referenceWidth,
    parallelWake,
    cosine: (direction * Math.cos(incidence)) / referenceWidth,
    sine: (direction * Math.sin(incidence)) / referenceWidth,
  };
  return { count: size, arc, position, speed, gradient, curvature, spacing: null, laminar, outline };
}

/** Value of a station array at a fractional station. */
export function stationValue(values: Readonly<Float64Array>, station: number): number {
  const i = Math.min(values.length - 2, Math.max(0, Math.floor(station)));
  return values[i] + (station - i) * (values[i + 1] - values[i]);
}

/** Fractional station of an arc length / D. */
export function stationOfArc(stations: SideStations, arcRatio: number): number {
  const { arc, count } = stations;
  const low = intervalAt(arc, arcRatio, count - 1);
  return low + (arcRatio - arc[low]) / (arc[low + 1] - arc[low]);
}

function wrappedNode(node: number, count: number): number {
  return ((node % count) + count) % count;
}

/** Curvature of the wall at a position, 1/m: linear between its nodes, as it jumps where lines and arcs meet. */
function curvatureAt({ curvature, count }: SectionNodes, position: number): number {
  const node = Math.floor(position);
  const before = curvature[wrappedNode(node, count)];
  const after = curvature[wrappedNode(node + 1, count)];
  return before + (position - node) * (after - before);
}

function distanceAlong(nodes: SectionNodes, from: number, to: number, direction: number): number {
  const distance = direction * (to - from);
  return distance < 0 ? distance + nodes.perimeter : distance;
}

/**
 * d(speed)/d(arc) at the positions, 1/D in units of U: along the contour, so that it needs no side's sign. Fourth-order
 * differences over the node steps, in which the velocity is smooth however unevenly the nodes stand, and the cubic
 * through the four nearest nodes between them.
 */
function gradientAlong(
  nodes: SectionNodes,
  velocity: Readonly<Float64Array>,
  position: Readonly<Float64Array>,
  referenceWidth: number,
): Float64Array {
  const { count, ds } = nodes;
  const wrap = (node: number): number => (node < 0 ? node + count : node >= count ? node - count : node);
  const atNode = (node: number): number => {
    const near = velocity[wrap(node + 1)] - velocity[wrap(node - 1)];
    const far = velocity[wrap(node + 2)] - velocity[wrap(node - 2)];
    return ((8 * near - far) / (12 * ds[wrap(node)])) * referenceWidth;
  };
  return position.map((p) => {
    const i = Math.floor(p);
    const u = p - i;
    if (u === 0) return atNode(i);
    return (
      (-u * (u - 1) * (u - 2) * atNode(i - 1)) / 6 +
      ((u + 1) * (u - 1) * (u - 2) * atNode(i)) / 2 -
      ((u + 1) * u * (u - 2) * atNode(i + 1)) / 2 +
      ((u + 1) * u * (u - 1) * atNode(i + 2)) / 6
    );
  });
}
