import type { DragBand } from "../../../engine/trust/dragInterval";
import { type Result, success } from "../../../result";
import { dragByOrientation } from "../drag/orientationDrag";
import { type Orientation, orientations } from "../drag/orientationIndex";
import type { PuckFlow } from "../drag/puckFlow";
import type { CasePuck, PuckCase } from "../puckCase";
import type { BandEnd } from "./bandedMotion";
import type { DragAreaAtSpeed } from "./motionBody";

/** Drag areas over the speed, by orientation and end of their band. */
export type DragTable = Readonly<Record<Orientation, Readonly<Record<BandEnd, DragAreaAtSpeed>>>>;

/** Steps of the table of drag areas that a motion reads, evenly spaced in the logarithm of the speed. */
const tableSteps = 20;

/** Drag areas over the solved speeds, linear in the logarithm of the speed, level beyond. */
export function dragTable(puck: CasePuck, flow: PuckFlow, { stream }: PuckCase): Result<DragTable> {
  const [slowest, fastest] = [stream.solvedSpeeds[0], stream.solvedSpeeds[stream.solvedSpeeds.length - 1]];
  const steps = fastest > slowest ? tableSteps : 0;
  const rows: Record<Orientation, DragBand>[] = [];
  for (let i = 0; i <= steps; i++) {
    const speed = slowest * (fastest / slowest) ** (steps === 0 ? 0 : i / steps);
    const drag = dragByOrientation(puck, flow, speed, stream.fluid.kinematicViscosity);
    if (!drag.ok) return drag;
    const { upright, flat, faceOn } = drag.value;
    rows.push({ upright: upright.dragArea, flat: flat.dragArea, faceOn: faceOn.dragArea });
  }
  const read = (orientation: Orientation, end: BandEnd): DragAreaAtSpeed => {
    const values = rows.map((row) => row[orientation][end]);
    return (speed) => {
      if (!(speed > slowest)) return values[0];
      if (speed >= fastest) return values[steps];
      const place = (steps * Math.log(speed / slowest)) / Math.log(fastest / slowest);
      const i = Math.min(steps - 1, Math.floor(place));
      return values[i] + (values[i + 1] - values[i]) * (place - i);
    };
  };
  const ends = (orientation: Orientation) => ({
    low: read(orientation, "low"),
    expected: read(orientation, "expected"),
    high: read(orientation, "high"),
  });
  return success(
    Object.fromEntries(orientations.map((orientation) => [orientation, ends(orientation)])) as Record<
      Orientation,
      ReturnType<typeof ends>
    >,
  );
}
