import { type DragBand, type PuckDrag, scaleBand } from "../../../engine/trust/dragInterval";
import { degreesOf, percentOf } from "../../../numerics/degreesAndPercent";
import { type Result, success } from "../../../result";
import type { CasePuck, PuckCase } from "../puckCase";
import type { PuckDragRow } from "../puckResult";
import { dragByOrientation, dragBySections, dragOverFloor, dragTilted } from "./orientationDrag";
import { orientations } from "./orientationIndex";
import { edgeOnApplicability, faceOnApplicability } from "./puckApplicability";
import type { PuckFlow } from "./puckFlow";
import { tiltedForces } from "./tiltedDrag";
import { conditionPuck } from "./wholePuck";

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
        states: own.states,
        crisisSpeedMetresPerSecond: null,
        twoSectionDragCoefficient: null,
        momentVolumeCubicMetres: null,
        liftAreaSquareMetres: null,
        ...rest,
      });
      for (const orientation of orientations) {
        const floorGapMetres = orientation === "flat" ? flow.flatGap : null;
        const applicability =
          orientation === "faceOn" ? faceOnApplicability(flow) : edgeOnApplicability(puck, floorGapMetres, flow);
        const more = orientation === "upright" ? uprightColumns(puck, flow, speed, kinematicViscosity) : {};
        rows.push(row(drag.value[orientation], { orientation, floorGapMetres, applicability, ...more }));
        for (const note of drag.value[orientation].notes) notes.add(note);
      }
      for (const { gap } of flow.overFloor.filter((one) => play.sweptGaps.includes(one.gap))) {
        const over = dragOverFloor(puck, flow, gap, speed, kinematicViscosity);
        if (!over.ok) return over;
        const applicability = edgeOnApplicability(puck, gap, flow);
        rows.push(row(over.value, { orientation: "overFloor", floorGapMetres: gap, applicability }));
      }
      for (const tilt of play.tilts)
        rows.push(row(...tiltedRow(puck, flow, drag.value, tilt, speed, kinematicViscosity)));
    }
  }
  return success({ rows, notes: [...notes] });
}

/** What only the upright row has: where its rim turns, and the estimate by sections. */
function uprightColumns(
  puck: CasePuck,
  flow: PuckFlow,
  speed: number,
  kinematicViscosity: number,
): Pick<PuckDragRow, "crisisSpeedMetresPerSecond" | "twoSectionDragCoefficient"> {
  const { whole, turbulenceIntensity } = flow;
  const crisis =
    whole === null
      ? null
      : conditionPuck(whole, puck, 0, speed, kinematicViscosity, turbulenceIntensity).crisisReynolds;
  const sections = whole === null ? null : dragBySections(puck, flow, speed, kinematicViscosity);
  return {
    crisisSpeedMetresPerSecond:
      crisis !== null && Number.isFinite(crisis) ? (crisis * kinematicViscosity) / puck.spec.diameterMetres : null,
    twoSectionDragCoefficient: sections?.ok === true ? sections.value.dragCoefficient : null,
  };
}

type TiltedOnly = Pick<
  PuckDragRow,
  "orientation" | "applicability" | "tiltDegrees" | "liftAreaSquareMetres" | "momentVolumeCubicMetres"
>;

function tiltedRow(
  puck: CasePuck,
  { whole, turbulenceIntensity }: PuckFlow,
  { upright, faceOn }: { readonly upright: PuckDrag; readonly faceOn: PuckDrag },
  tilt: number,
  speed: number,
  kinematicViscosity: number,
): [Omit<PuckDrag, "notes">, TiltedOnly] {
  const { referenceArea, referenceAreaName } = faceOn;
  const own = { orientation: "tilted" as const, tiltDegrees: degreesOf(tilt) };
  if (whole !== null) {
    const { drag, liftArea, momentVolume } = dragTilted(
      puck,
      whole,
      turbulenceIntensity,
      tilt,
      speed,
      kinematicViscosity,
    );
    return [
      drag,
      {
        ...own,
        liftAreaSquareMetres: liftArea,
        momentVolumeCubicMetres: momentVolume,
        applicability: "solved flow of the whole body, separation lines assumed between edge-on and face-on",
      },
    ];
  }
  const { dragArea, liftArea } = tiltedForces(upright.dragArea, faceOn.dragArea, tilt);
  const dragCoefficient: DragBand = scaleBand(dragArea, 1 / referenceArea);
  return [
    { dragArea, dragCoefficient, referenceArea, referenceAreaName, states: [] },
    {
      ...own,
      liftAreaSquareMetres: liftArea,
      momentVolumeCubicMetres: null,
      applicability: "plate theory between edge-on and face-on, no measurement found",
    },
  ];
}
