import { laminarLayer } from "../../shared/engine/layer/laminarLayer";
import type { SideStations } from "../../shared/engine/layer/sideStations";

/**
 * Stations of one side with a given edge speed from a stagnation point at 0, at equal steps.
 * @param speedAt edge speed / U over arc / D, 0 at 0
 * @param slopeAt its derivative
 * @param end     arc / D of the last station
 * @param curvature of the wall * D
 */
export function edgeStations(
  speedAt: (s: number) => number,
  slopeAt: (s: number) => number,
  end: number,
  curvature = 2,
  count = 1201,
): SideStations {
  const arc = Float64Array.from({ length: count }, (_, i) => (i * end) / (count - 1));
  const speed = arc.map(speedAt);
  const gradient = arc.map(slopeAt);
  return {
    count,
    arc,
    position: arc.map((_, i) => i),
    speed,
    gradient,
    curvature: new Float64Array(count).fill(curvature),
    spacing: null,
    laminar: laminarLayer(arc, speed, gradient),
  };
}

/** The attached flow past a circle of diameter 1, speed 2 sin(2 s), as far as an angle from the front. */
export function circleStations(degrees: number, count?: number): SideStations {
  return edgeStations(
    (s) => 2 * Math.sin(2 * s),
    (s) => 4 * Math.cos(2 * s),
    (degrees * Math.PI) / 360,
    2,
    count,
  );
}
