import { floorNotes } from "../../../engine/solve/floorNotes";
import { type DragBand, type DragState, dragOn, type PuckDrag, scaleBand } from "../../../engine/trust/dragInterval";
import type { ConditionedBody } from "../../../engine/whole/conditionedFlow";
import type { WholeFlows } from "../../../engine/whole/wholeDrag";
import { type WholeOutcome, wholeStates } from "../../../engine/whole/wholeStates";
import { degreesOf } from "../../../numerics/degreesAndPercent";
import { problem, type Result, success } from "../../../result";
import type { PuckFigures } from "../body/puckFigures";
import type { PuckSpec } from "../body/puckSpec";
import type { CasePuck } from "../puckCase";
import { type EdgeOnShape, edgeOnDrag } from "./edgeOnDrag";
import { faceOnDrag } from "./faceOnDrag";
import { solvedFaceOnDrag } from "./faceOnFlow";
import type { Orientation, OrientationDrag } from "./orientationIndex";
import { type PuckFlow, widened } from "./puckFlow";
import { conditionPuck } from "./wholePuck";

export type DragByOrientation = Readonly<Record<Orientation, PuckDrag>>;

/** What drag needs to know of a puck besides its flow. */
export interface FiguredPuck extends Pick<CasePuck, "spec" | "sandGrainRoughness"> {
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
  const faceOn = dragFaceOn(puck, flow, speed, kinematicViscosity);
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
  flow: Pick<PuckFlow, "whole" | "open" | "notes" | "turbulenceIntensity">,
  speed: number,
  kinematicViscosity: number,
): Result<PuckDrag> {
  if (flow.whole === null) return dragBySections(puck, flow, speed, kinematicViscosity);
  const { outcome } = outcomeAt(puck, flow.whole, flow.turbulenceIntensity, 0, speed, kinematicViscosity);
  return completed(success(edgeOnFigures(puck, outcome)), puck, flow);
}

/** The two-section estimate of the same; a problem where the sections were not solved. */
export function dragBySections(
  puck: FiguredPuck,
  flow: Pick<PuckFlow, "open" | "notes">,
  speed: number,
  kinematicViscosity: number,
): Result<PuckDrag> {
  if (flow.open === null) return problem("edge-on", "plan and profile sections were not solved");
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
  if (solved === undefined) throw new RangeError(`no flow was solved at a gap of ${gap} m.`);
  const shape = edgeOnShape(puck);
  if (solved.flow.whole !== null) {
    const open = dragUpright(puck, flow, speed, kinematicViscosity);
    if (!open.ok) return open;
    const { outcome } = outcomeAt(puck, solved.flow.whole, flow.turbulenceIntensity, 0, speed, kinematicViscosity);
    const { dragArea, referenceArea, referenceAreaName, notes, states } = edgeOnFigures(puck, outcome);
    const held = widened(dragArea, open.value.dragArea);
    const near = floorNotes(gap / puck.spec.thicknessMetres);
    return completed(success(dragOn(held, referenceArea, referenceAreaName, [...notes, ...near], states)), puck, flow);
  }
  if (flow.open === null) return problem("edge-on", "plan and profile sections were not solved");
  const open = edgeOnDrag(shape, flow.open, speed, kinematicViscosity);
  if (!open.ok) return open;
  const floor = edgeOnDrag(shape, solved.flow.sections, speed, kinematicViscosity, { kind: "floor", gap });
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
  puck: FiguredPuck,
  flow: Pick<PuckFlow, "whole" | "faceOn" | "turbulenceIntensity">,
  speed: number,
  kinematicViscosity: number,
): Result<PuckDrag> {
  const { spec } = puck;
  if (flow.whole !== null) {
    return success(dragTilted(puck, flow.whole, flow.turbulenceIntensity, Math.PI / 2, speed, kinematicViscosity).drag);
  }
  if (flow.faceOn === null) return faceOnDrag(spec);
  const reynolds = (speed * spec.diameterMetres) / kinematicViscosity;
  return success(solvedFaceOnDrag(spec, flow.faceOn, reynolds, flow.turbulenceIntensity));
}

/**
 * Drag, lift and moment of a puck whose mid-plane makes an angle with the stream; coefficients on the face area.
 * @param tilt rad, above 0 to pi / 2
 */
export function dragTilted(
  puck: FiguredPuck,
  whole: WholeFlows,
  turbulenceIntensity: number,
  tilt: number,
  speed: number,
  kinematicViscosity: number,
): { readonly drag: PuckDrag; readonly liftArea: DragBand; readonly momentVolume: DragBand } {
  const { outcome } = outcomeAt(puck, whole, turbulenceIntensity, tilt, speed, kinematicViscosity);
  const face = (Math.PI / 4) * puck.spec.diameterMetres ** 2;
  // The shadow at both ends in closed form, so that a tilt to there is the attitude itself.
  const frontalArea =
    tilt === 0 ? puck.figures.frontalAreaEdgeOnSquareMetres : tilt === Math.PI / 2 ? face : outcome.frontalArea;
  const dragArea = scaleBand(outcome.dragCoefficient, frontalArea);
  const notes = [tilt === Math.PI / 2 ? wholeFaceOnNote : wholeTiltNote];
  return {
    drag: dragOn(dragArea, face, "face area", notes, stateRows(outcome, frontalArea / face)),
    liftArea: scaleBand(outcome.lift, frontalArea),
    momentVolume: scaleBand(outcome.moment, frontalArea * puck.spec.diameterMetres),
  };
}

const wholeFaceOnNote =
  "Face-on: the flow along the axis is solved with base pressures of discs, hemispheres and spheres. The layer leaves the front edge unless it turns there or its bubble closes. Recess and grooves are left out.";
const wholeTiltNote =
  "At a tilt the flow is solved with separation lines between those edge-on and face-on, which are assumed; no measurement of a puck at a tilt was found.";

/** States of a puck at a tilt in one stream, and what its draws are taken from. */
export function outcomeAt(
  puck: Pick<CasePuck, "spec" | "sandGrainRoughness">,
  whole: WholeFlows,
  turbulenceIntensity: number,
  tilt: number,
  speed: number,
  kinematicViscosity: number,
): { readonly outcome: WholeOutcome; readonly body: ConditionedBody } {
  const body = conditionPuck(whole, puck, tilt, speed, kinematicViscosity, turbulenceIntensity);
  return { outcome: wholeStates(body), body };
}

/** On the frontal area of the puck itself, of which a body on the floor with its image has twice. */
function edgeOnFigures(puck: FiguredPuck, outcome: WholeOutcome): PuckDrag {
  const area = puck.figures.frontalAreaEdgeOnSquareMetres;
  const notes = outcome.states.some(({ settled }) => !settled) ? [unsettledNote] : [];
  return dragOn(scaleBand(outcome.dragCoefficient, area), area, "frontal area edge-on", notes, stateRows(outcome, 1));
}

const unsettledNote =
  "A turned rim's layer leaves later than 124 degrees from the front: not settled. Such a state's drag is that of a separation there, low confidence.";

function stateRows({ states }: WholeOutcome, scale: number): DragState[] {
  return states.map(({ rimState, edgeState, share, rimSeparation, settled, dragCoefficient, parts, basePressure }) => ({
    rimState,
    edgeState,
    share,
    rimSeparationDegrees: rimSeparation === null ? null : degreesOf(rimSeparation),
    settled,
    dragCoefficient: scaleBand(dragCoefficient, scale),
    parts: {
      forebody: scaleBand(parts.forebody, scale),
      lostSuction: scaleBand(parts.lostSuction, scale),
      base: scaleBand(parts.base, scale),
      friction: scaleBand(parts.friction, scale),
    },
    basePressureCoefficient: basePressure,
  }));
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
  const { dragArea, referenceArea, referenceAreaName, notes, states } = drag.value;
  const recessed = { ...dragArea, high: dragArea.high + recessWallArea(spec) };
  return success(dragOn(recessed, referenceArea, referenceAreaName, [...notes, ...flow.notes], states));
}

/** Depth x diameter of the recesses of a puck, m^2: what of their walls the stream could press on edge-on. */
export function recessWallArea({ face }: PuckSpec): number {
  if (face.kind !== "recess") return 0;
  return (face.side === "both" ? 2 : 1) * face.depthMetres * face.diameterMetres;
}

/** The drag areas alone, as the index takes them. */
export function dragAreas(drag: DragByOrientation): OrientationDrag {
  return { upright: drag.upright.dragArea, flat: drag.flat.dragArea, faceOn: drag.faceOn.dragArea };
}
