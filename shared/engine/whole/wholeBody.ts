import { type Result, success } from "../../result";
import type { MeridianCurve } from "./meridianCurve";
import { type MeridianShape, meridianShape } from "./meridianShape";
import { type BodyEdges, bodyEdges } from "./separationFamily";
import { type WholeFlow, type WholeResolution, wholeFlow } from "./wholeFlow";

/** A body of revolution with its flow prepared: nothing here depends on stream, tilt or separation. */
export interface WholeBody {
  readonly flow: WholeFlow;
  readonly shape: MeridianShape;
  /** Null of a body without faces, as a sphere: it then separates all round at one angle. */
  readonly edges: BodyEdges | null;
  /** Largest extent across and along the axis, m. */
  readonly diameter: number;
  readonly thickness: number;
  /** Gap between the lower face and a floor, m; null in open water. */
  readonly floorGap: number | null;
}

/** Resolution of states and bands: drag within 0.5 % of twice the nodes, harmonics and panels on the edges. */
export const stateResolution: WholeResolution = { harmonics: 10, order: 8, edgePanels: 1 };

/** Resolution while a dimension is being dragged: drag within 2 %. */
export const coarseResolution: WholeResolution = { harmonics: 6, order: 6, edgePanels: 1 };

/**
 * @param curves   the meridian from the lower pole to the upper one, m, without recess and grooves
 * @param floorGap m, above 0: a floor parallel to the faces; null in open water
 */
export function prepareWholeBody(
  curves: readonly MeridianCurve[],
  floorGap: number | null = null,
  resolution: WholeResolution = stateResolution,
): Result<WholeBody> {
  const flow = wholeFlow(curves, resolution, floorGap);
  if (!flow.ok) return flow;
  const shape = meridianShape(flow.value.panels);
  if (!shape.ok) return shape;
  const thickness = curves[curves.length - 1].at(1).z - curves[0].at(0).z;
  return success({
    flow: flow.value,
    shape: shape.value,
    edges: bodyEdges(shape.value),
    diameter: 2 * flow.value.panels.radius,
    thickness,
    floorGap,
  });
}
