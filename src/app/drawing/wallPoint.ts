import type { SectionNodes } from "../../../shared/engine/geometry/sectionNodes";
import type { SideSolution } from "../../../shared/engine/solution";
import { wrapArc } from "./contourArc";

/** A place on the wall, m, and its outward normal. */
export interface WallPoint {
  readonly x: number;
  readonly y: number;
  readonly normalX: number;
  readonly normalY: number;
}

/** The wall at an arc length from the nose, m, counter-clockwise. */
export function wallPoint(nodes: SectionNodes, arc: number): WallPoint {
  const at = wrapArc(arc, nodes.perimeter);
  let low = 0;
  let high = nodes.count;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (nodes.arc[middle] <= at) low = middle;
    else high = middle;
  }
  const next = (low + 1) % nodes.count;
  const end = next === 0 ? nodes.perimeter : nodes.arc[next];
  const share = end > nodes.arc[low] ? (at - nodes.arc[low]) / (end - nodes.arc[low]) : 0;
  const between = (values: Readonly<Float64Array>) => values[low] + share * (values[next] - values[low]);
  return {
    x: between(nodes.x),
    y: between(nodes.y),
    normalX: between(nodes.tangentY),
    normalY: -between(nodes.tangentX),
  };
}

/** From arc length behind the stagnation point / width on one side to arc length from the nose, m; see surfaceParts. */
export function contourArc(
  { separationArc, separationContourArc }: SideSolution,
  side: "upper" | "lower",
  width: number,
  arc: number,
): number {
  return separationContourArc - (side === "lower" ? 1 : -1) * (separationArc - arc) * width;
}
