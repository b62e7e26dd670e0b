import { type DragBand, type PuckDrag, scaleBand } from "../../../engine/trust/dragInterval";
import { degreesOf, percentOf } from "../../../numerics/degreesAndPercent";
import { type Result, success } from "../../../result";
import type { CasePuck, PuckCase } from "../puckCase";
import type { PuckDragRow } from "../puckResult";
import { dragByOrientation, dragOverFloor } from "./orientationDrag";
import { orientations } from "./orientationIndex";
import { edgeOnApplicability, faceOnApplicability } from "./puckApplicability";
import type { PuckFlow } from "./puckFlow";
import { tiltedForces } from "./tiltedDrag";

/** Drag rows of a puck, by turbulence, speed, orientation, gap and tilt, and the notes that go with them, each once. */
export function puckDragRows(
  puck: CasePuck,
  flows: readonly PuckFlow[],
  { stream, play }: PuckCase,
): Result<{ readonly rows: readonly PuckDragRow[]; readonly notes: readonly string[] }> {
  const { density, kinematicViscosity } = stream.fluid;
  const { diameterMetres: d } = puck.spec;
  const rows: PuckDragRow[] = [];
  const notes = new Set<string>();
  for (const flow of flows) {
    for (const speed of stream.speeds) {
      const drag = dragByOrientation(puck, flow, speed, kinematicViscosity);
      if (!drag.ok) return drag;
      const row = (
        own: Omit<PuckDrag, "notes">,
        rest: Pick<PuckDragRow, "orientation" | "applicability"> & Partial<PuckDragRow>,
      ): PuckDragRow => ({
        turbulencePercent: percentOf(flow.turbulenceIntensity),
        speedMetresPerSecond: speed,
        tiltDegrees: null,
        floorGapMetres: null,
        reynoldsOnDiameter: (speed * d) / kinematicViscosity,
        dragAreaSquareMetres: own.dragArea,
        dragCoefficient: own.dragCoefficient,
        referenceArea: own.referenceAreaName,
        referenceAreaSquareMetres: own.referenceArea,
        dragNewtons: scaleBand(own.dragArea, 0.5 * density * speed ** 2),
        liftAreaSquareMetres: null,
        ...rest,
      });
      for (const orientation of orientations) {
        const floorGapMetres = orientation === "flat" ? flow.flatGap : null;
        const applicability =
          orientation === "faceOn" ? faceOnApplicability(flow) : edgeOnApplicability(puck, floorGapMetres);
        rows.push(row(drag.value[orientation], { orientation, floorGapMetres, applicability }));
        for (const note of drag.value[orientation].notes) notes.add(note);
      }
      for (const { gap } of flow.overFloor.filter((one) => play.sweptGaps.includes(one.gap))) {
        const over = dragOverFloor(puck, flow, gap, speed, kinematicViscosity);
        if (!over.ok) return over;
        const applicability = edgeOnApplicability(puck, gap);
        rows.push(row(over.value, { orientation: "overFloor", floorGapMetres: gap, applicability }));
      }
      for (const tilt of play.tilts) rows.push(row(...tiltedRow(drag.value, tilt)));
    }
  }
  return success({ rows, notes: [...notes] });
}

type TiltedOnly = Pick<PuckDragRow, "orientation" | "applicability" | "tiltDegrees" | "liftAreaSquareMetres">;

function tiltedRow(
  { upright, faceOn }: { readonly upright: PuckDrag; readonly faceOn: PuckDrag },
  tilt: number,
): [Omit<PuckDrag, "notes">, TiltedOnly] {
  const { dragArea, liftArea } = tiltedForces(upright.dragArea, faceOn.dragArea, tilt);
  const { referenceArea, referenceAreaName } = faceOn;
  const dragCoefficient: DragBand = scaleBand(dragArea, 1 / referenceArea);
  return [
    { dragArea, dragCoefficient, referenceArea, referenceAreaName },
    {
      orientation: "tilted",
      tiltDegrees: degreesOf(tilt),
      liftAreaSquareMetres: liftArea,
      applicability: "plate theory between edge-on and face-on, no measurement found",
    },
  ];
}
