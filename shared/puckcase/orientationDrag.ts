import { dragOn, type PuckDrag } from "../puck/dragBand";
import { edgeOnDrag } from "../puck/edgeOnDrag";
import { faceOnDrag } from "../puck/faceOnDrag";
import type { Orientation, OrientationDrag } from "../puck/orientationIndex";
import { type Result, success } from "../result";
import type { CasePuck } from "./puckCase";
import { type PuckFlow, widened } from "./puckFlow";

export type DragByOrientation = Readonly<Record<Orientation, PuckDrag>>;

/**
 * Drag of a puck in all orientations of play at one speed.
 * @param speed              m/s, above 0
 * @param kinematicViscosity m^2/s, above 0
 */
export function dragByOrientation(
  { spec, figures }: Pick<CasePuck, "spec" | "figures">,
  flow: PuckFlow,
  speed: number,
  kinematicViscosity: number,
): Result<DragByOrientation> {
  const shape = {
    diameter: spec.diameterMetres,
    thickness: spec.thicknessMetres,
    frontalArea: figures.frontalAreaEdgeOnSquareMetres,
  };
  const upright = edgeOnDrag(shape, flow.open, speed, kinematicViscosity);
  if (!upright.ok) return upright;
  const faceOn = faceOnDrag(spec);
  if (!faceOn.ok) return faceOn;
  const notes = [...flow.notes];
  const withNotes = (drag: PuckDrag): PuckDrag => ({ ...drag, notes: [...drag.notes, ...notes] });
  if (flow.floor === null) {
    return success({ upright: withNotes(upright.value), flat: withNotes(upright.value), faceOn: faceOn.value });
  }
  const floor = edgeOnDrag(shape, flow.floor, speed, kinematicViscosity, { kind: "floor", gap: 0 });
  if (!floor.ok) return floor;
  const { referenceArea, referenceAreaName } = floor.value;
  const dragArea = widened(floor.value.dragArea, upright.value.dragArea);
  const flat = dragOn(dragArea, referenceArea, referenceAreaName, floor.value.notes);
  return success({ upright: withNotes(upright.value), flat: withNotes(flat), faceOn: faceOn.value });
}

/** The drag areas alone, as the index takes them. */
export function dragAreas(drag: DragByOrientation): OrientationDrag {
  return { upright: drag.upright.dragArea, flat: drag.flat.dragArea, faceOn: drag.faceOn.dragArea };
}
