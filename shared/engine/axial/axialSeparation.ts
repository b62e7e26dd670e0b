import { findSwitch } from "../../numerics/rootFinder";
import { laminarLayer } from "../layer/laminarLayer";
import type { AxialFlow } from "./axialFlow";
import type { AxialNodes } from "./axialNodes";
import { type AxialWake, axialWake } from "./axialWake";

/**
 * Arc length at which a laminar layer on a body of revolution separates, m; Infinity when it does not ahead of `end`.
 * Mangler's (1948) transformation makes it a plane layer with the same edge speed: arcs grow with the square of the
 * distance from the axis. Like the plane layer it begins as at a plane stagnation point, and soon forgets that.
 * @param speed surface speed / U at the panels, shape [count]
 * @param end   m
 */
export function laminarSeparationArc(nodes: AxialNodes, speed: Readonly<Float64Array>, end: number): number {
  const { count, arc, r } = nodes;
  const widest = r.reduce((most, each) => Math.max(most, each), 0);
  const places = [0];
  const plane = [0];
  const speeds = [0];
  let before = { arc: 0, r: 0, plane: 0 };
  for (let i = 0; i < count && arc[i] < end; i++) {
    if (!(speed[i] > 0)) return Number.POSITIVE_INFINITY;
    const squares = (before.r ** 2 + before.r * r[i] + r[i] ** 2) / 3;
    const next = before.plane + ((arc[i] - before.arc) * squares) / widest ** 2 / (2 * widest);
    places.push(arc[i]);
    plane.push(next);
    speeds.push(speed[i]);
    before = { arc: arc[i], r: r[i], plane: next };
  }
  if (places.length < 3) return Number.POSITIVE_INFINITY;
  const last = plane.length - 1;
  const gradient = plane.map((_, i) => {
    const [a, b] = [Math.max(0, i - 1), Math.min(last, i + 1)];
    return (speeds[b] - speeds[a]) / (plane[b] - plane[a]);
  });
  const layer = laminarLayer(Float64Array.from(plane), Float64Array.from(speeds), Float64Array.from(gradient));
  if (layer.separation === Number.POSITIVE_INFINITY) return layer.separation;
  const i = Math.min(last - 1, Math.floor(layer.separation));
  return places[i] + (layer.separation - i) * (places[i + 1] - places[i]);
}

/** Separation is found to this part of a panel. */
const positionTolerance = 1e-9;

/**
 * The flow whose laminar layer separates where its wake begins, the foremost one; null when there is none.
 * @param speedRatio k = sqrt(1 - Cpb)
 */
export function laminarAxialWake(flow: AxialFlow, speedRatio: number): AxialWake | null {
  const { nodes } = flow;
  const { arc, count } = nodes;
  const isAttached = (at: number) => {
    const { speed } = axialWake(flow, at, speedRatio);
    return laminarSeparationArc(nodes, speed, at) >= at;
  };
  // A few panels ahead are needed to follow the layer, and some behind for the base.
  const first = Math.max(6, Math.floor(count / 12));
  let attached = Number.NaN;
  for (let i = first; i < count - 4; i++) {
    if (isAttached(arc[i])) {
      attached = arc[i];
      continue;
    }
    if (Number.isNaN(attached)) return null;
    const { failing } = findSwitch(isAttached, attached, arc[i], positionTolerance * (arc[i] - attached));
    return axialWake(flow, failing, speedRatio);
  }
  return null;
}
