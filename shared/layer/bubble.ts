import { arcAtPosition, interpolateAtPosition } from "../geometry/arcPosition";
import type { SectionNodes } from "../geometry/sectionNodes";
import type { Side } from "./sideStations";

/** Turbulence intensity below which a separated layer no longer notices the stream, about where the correlation meets Horton's 4e4 to 5e4. */
const QUIET_STREAM = 0.001;

/**
 * Length of the laminar part of a separated shear layer as a Reynolds number, q U l1 / nu = 2.5e4 log10 coth(17.32 Tu).
 * Source: Roberts (1980), AIAA J. 18, 25-31 (constants from memory). The formula grows without limit in a quiet stream,
 * where Horton (1968) has 4e4 to 5e4, so Tu is held at 0.1 % from below, which gives 4.4e4.
 * @param turbulenceIntensity velocity fluctuation / edge speed at separation, a fraction
 */
export function shearLayerTransitionReynolds(turbulenceIntensity: number): number {
  const argument = 17.32 * Math.max(QUIET_STREAM, turbulenceIntensity);
  return 2.5e4 * Math.log10(1 / Math.tanh(argument));
}

/**
 * Where a shear layer that left the wall comes back to it. It leaves along the tangent while the wall curves away
 * beneath it; after transition it spreads as a wedge, and reattaches where the wedge meets the wall.
 * On a circle of radius R the layer comes back only if the laminar length is below slope * R / 2.
 * @param position separation position, node steps from the nose
 * @param laminarLength length of the laminar shear layer / D
 * @param slope slope of the wedge
 * @param referenceWidth D, m
 * @returns arc length along the wall from separation to reattachment / D; null when the layer never comes back
 */
export function reattachmentDistance(
  nodes: SectionNodes,
  side: Side,
  position: number,
  laminarLength: number,
  slope: number,
  referenceWidth: number,
): number | null {
  const { count, x, y } = nodes;
  const direction = side === "lower" ? 1 : -1;
  const x0 = interpolateAtPosition(x, position);
  const y0 = interpolateAtPosition(y, position);
  const tangentX = interpolateAtPosition(nodes.tangentX, position);
  const tangentY = interpolateAtPosition(nodes.tangentY, position);
  const length = Math.hypot(tangentX, tangentY);
  const startArc = arcAtPosition(nodes, position);
  let previousExcess = -slope * laminarLength;
  let previousArc = 0;
  const first = direction > 0 ? Math.floor(position) + 1 : Math.ceil(position) - 1;
  for (let step = 0; step < count / 2; step++) {
    const node = (((first + direction * step) % count) + count) % count;
    const dx = (x[node] - x0) / referenceWidth;
    const dy = (y[node] - y0) / referenceWidth;
    const along = (direction * (dx * tangentX + dy * tangentY)) / length;
    if (!(along > 0)) return null;
    const gap = -(dx * tangentY - dy * tangentX) / length;
    const excess = slope * (along - laminarLength) - gap;
    const walked = direction * (nodes.arc[node] - startArc);
    const arc = (walked < 0 ? walked + nodes.perimeter : walked) / referenceWidth;
    if (excess >= 0) return previousArc + ((arc - previousArc) * previousExcess) / (previousExcess - excess);
    previousExcess = excess;
    previousArc = arc;
  }
  return null;
}
