import { type DragBand, scaleBand } from "../puck/dragBand";
import { shortestMeasuredRatio } from "../puck/endRelief";
import { orientations } from "../puck/orientationIndex";
import { tiltedForces } from "../puck/tiltedDrag";
import { type Result, success } from "../result";
import { dragByOrientation } from "./orientationDrag";
import type { CasePuck, PuckCase } from "./puckCase";
import type { PuckFlow } from "./puckFlow";
import type { PuckDragRow } from "./puckResult";

const degreesPerRadian = 180 / Math.PI;

/** Drag rows of a puck, by turbulence, speed, orientation and tilt, and the notes that go with them, each once. */
export function puckDragRows(
  puck: CasePuck,
  flows: readonly PuckFlow[],
  { stream, play }: PuckCase,
): Result<{ readonly rows: readonly PuckDragRow[]; readonly notes: readonly string[] }> {
  const { density, kinematicViscosity } = stream.fluid;
  const { diameterMetres: d, thicknessMetres: t } = puck.spec;
  const edgeOnApplicability =
    t / d < shortestMeasuredRatio
      ? "extrapolated: solved sections with end relief beyond its tables"
      : "solved sections with published end relief";
  const rows: PuckDragRow[] = [];
  const notes = new Set<string>();
  for (const flow of flows) {
    for (const speed of stream.speeds) {
      const drag = dragByOrientation(puck, flow, speed, kinematicViscosity);
      if (!drag.ok) return drag;
      const condition = {
        turbulencePercent: flow.turbulencePercent,
        speedMetresPerSecond: speed,
        reynoldsOnDiameter: (speed * d) / kinematicViscosity,
      };
      const force = (dragArea: DragBand) => scaleBand(dragArea, 0.5 * density * speed ** 2);
      for (const orientation of orientations) {
        const own = drag.value[orientation];
        rows.push({
          ...condition,
          orientation,
          tiltDegrees: null,
          dragAreaSquareMetres: own.dragArea,
          dragCoefficient: own.dragCoefficient,
          referenceArea: own.referenceAreaName,
          referenceAreaSquareMetres: own.referenceArea,
          dragNewtons: force(own.dragArea),
          liftAreaSquareMetres: null,
          applicability: orientation === "faceOn" ? "published tables, no flow solved" : edgeOnApplicability,
        });
        for (const note of own.notes) notes.add(note);
      }
      const { upright, faceOn } = drag.value;
      for (const tilt of play.tilts) {
        const { dragArea, liftArea } = tiltedForces(upright.dragArea, faceOn.dragArea, tilt);
        rows.push({
          ...condition,
          orientation: "tilted",
          tiltDegrees: Number((tilt * degreesPerRadian).toFixed(9)),
          dragAreaSquareMetres: dragArea,
          dragCoefficient: scaleBand(dragArea, 1 / faceOn.referenceArea),
          referenceArea: faceOn.referenceAreaName,
          referenceAreaSquareMetres: faceOn.referenceArea,
          dragNewtons: force(dragArea),
          liftAreaSquareMetres: liftArea,
          applicability: "plate theory between edge-on and face-on, no measurement found",
        });
      }
    }
  }
  return success({ rows, notes: [...notes] });
}
