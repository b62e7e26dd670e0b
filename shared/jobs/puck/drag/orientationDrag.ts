import { dragOn, type PuckDrag } from "../../../engine/trust/dragInterval";
import { type Result, success } from "../../../result";
import type { PuckFigures } from "../body/puckFigures";
import type { PuckSpec } from "../body/puckSpec";
import { type EdgeOnShape, edgeOnDrag } from "./edgeOnDrag";
import { faceOnDrag } from "./faceOnDrag";
import { solvedFaceOnDrag } from "./faceOnFlow";
import type { Orientation, OrientationDrag } from "./orientationIndex";
import { type PuckFlow, widened } from "./puckFlow";

export type DragByOrientation = Readonly<Record<Orientation, PuckDrag>>;

/** What drag needs to know of a puck besides its flow. */
export interface FiguredPuck {
  readonly spec: PuckSpec;
  readonly figures: Pick<PuckFigures, "frontalAreaEdgeOnSquareMetres">;
}

/**
 * Drag of a puck in all orientations of play at one speed.
 * @param speed              m/s, above 0
 * @param kinematicViscosity m^2/s, above 0
 */
export function dragByOrientation(
  puck: FiguredPuck,
  flow: PuckFlow,
  speed: number,
  kinematicViscosity: number,
): Result<DragByOrientation> {
  const upright = dragUpright(puck, flow, speed, kinematicViscosity);
  if (!upright.ok) return upright;
  const flat = flow.flatGap === null ? upright : dragOverFloor(puck, flow, flow.flatGap, speed, kinematicViscosity);
  if (!flat.ok) return flat;
  const faceOn = dragFaceOn(puck.spec, flow, speed, kinematicViscosity);
  if (!faceOn.ok) return faceOn;
  return success({ upright: upright.value, flat: flat.value, faceOn: faceOn.value });
}

/**
 * Drag of a puck that moves edge-on in open water.
 * @param speed              m/s, above 0
 * @param kinematicViscosity m^2/s, above 0
 */
export function dragUpright(
  puck: FiguredPuck,
  flow: Pick<PuckFlow, "open" | "notes">,
  speed: number,
  kinematicViscosity: number,
): Result<PuckDrag> {
  return completed(edgeOnDrag(edgeOnShape(puck), flow.open, speed, kinematicViscosity), puck, flow);
}

/**
 * Drag of a puck that lies flat over the floor, its band widened to hold the figure in open water.
 * @param gap m; one of those that the flow was solved at
 */
export function dragOverFloor(
  puck: FiguredPuck,
  flow: PuckFlow,
  gap: number,
  speed: number,
  kinematicViscosity: number,
): Result<PuckDrag> {
  const solved = flow.overFloor.find((one) => one.gap === gap);
  if (solved === undefined) throw new RangeError(`no section was solved at a gap of ${gap} m.`);
  const shape = edgeOnShape(puck);
  const open = edgeOnDrag(shape, flow.open, speed, kinematicViscosity);
  if (!open.ok) return open;
  const floor = edgeOnDrag(shape, solved.sections, speed, kinematicViscosity, { kind: "floor", gap });
  if (!floor.ok) return floor;
  const { dragArea, referenceArea, referenceAreaName, notes } = floor.value;
  const held = widened(dragArea, open.value.dragArea);
  return completed(success(dragOn(held, referenceArea, referenceAreaName, notes)), puck, flow);
}

/**
 * Drag of a puck that moves along its axis.
 * @param speed              m/s, above 0
 * @param kinematicViscosity m^2/s, above 0
 */
export function dragFaceOn(
  spec: PuckSpec,
  flow: Pick<PuckFlow, "faceOn" | "turbulenceIntensity">,
  speed: number,
  kinematicViscosity: number,
): Result<PuckDrag> {
  if (flow.faceOn === null) return faceOnDrag(spec);
  const reynolds = (speed * spec.diameterMetres) / kinematicViscosity;
  return success(solvedFaceOnDrag(spec, flow.faceOn, reynolds, flow.turbulenceIntensity));
}

function edgeOnShape({ spec, figures }: FiguredPuck): EdgeOnShape {
  return {
    diameter: spec.diameterMetres,
    thickness: spec.thicknessMetres,
    frontalArea: figures.frontalAreaEdgeOnSquareMetres,
  };
}

/** With the band of a recess and what the flow has to say. */
function completed(drag: Result<PuckDrag>, { spec }: FiguredPuck, flow: Pick<PuckFlow, "notes">): Result<PuckDrag> {
  if (!drag.ok) return drag;
  const { dragArea, referenceArea, referenceAreaName, notes } = drag.value;
  const recessed = { ...dragArea, high: dragArea.high + recessWallArea(spec) };
  return success(dragOn(recessed, referenceArea, referenceAreaName, [...notes, ...flow.notes]));
}

/** Depth x diameter of the recesses of a puck, m^2: what of their walls the stream could press on edge-on. */
function recessWallArea({ face }: PuckSpec): number {
  if (face.kind !== "recess") return 0;
  return (face.side === "both" ? 2 : 1) * face.depthMetres * face.diameterMetres;
}

/** The drag areas alone, as the index takes them. */
export function dragAreas(drag: DragByOrientation): OrientationDrag {
  return { upright: drag.upright.dragArea, flat: drag.flat.dragArea, faceOn: drag.faceOn.dragArea };
}
