import { shortNumber } from "../plots/curveRow";
import { surfacePositions } from "../plots/surfacePosition";
import { risingState, type Solved } from "../section/solved";
import { nearestNode } from "./contourArc";
import { type LayerThere, layerAt } from "./layerProfileScene";

/** A node of the wall, its layer where there is one, and its values in words. */
export interface LocalValues {
  readonly node: number;
  readonly layer: LayerThere | null;
  readonly text: string;
}

/** What the surface nearest to a point of the drawing has: a node and its values in words; null far from the surface. */
export function localValues(solved: Solved, x: number, y: number): LocalValues | null {
  const { nodes, incidence, referenceWidth } = solved.solution;
  const state = risingState(solved.solution);
  if (state === null) return null;
  const node = nearestNode(nodes, x, y);
  if (Math.hypot(nodes.x[node] - x, nodes.y[node] - y) > 0.25 * referenceWidth) return null;
  const degrees = surfacePositions(nodes, "angle", incidence, referenceWidth)[node];
  const side = degrees >= 0 ? "upper" : "lower";
  const speed = Math.abs(state.surfaceVelocity[node]);
  const layer = layerAt(nodes, state, referenceWidth, node);
  return {
    node,
    layer,
    text: `${side} side, ${Math.abs(degrees).toFixed(1)}° from the front: Cp ${state.pressureCoefficient[node].toFixed(3)}, surface speed ${shortNumber(speed * solved.design.speed)} m/s (${speed.toFixed(2)} U)${layer === null ? "" : `, ${layerText(layer, referenceWidth)}`}`,
  };
}

function layerText({ momentumThickness, shapeFactor, isTurbulent }: LayerThere, width: number): string {
  return `${isTurbulent ? "turbulent" : "laminar"} layer, θ ${shortNumber(momentumThickness * width * 1000)} mm, H ${shapeFactor.toFixed(2)}`;
}
