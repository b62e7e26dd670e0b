import { SHORT_BODY_NUMBERS } from "../../../engine/constants/shortBodyNumbers";
import type { DragBand } from "../../../engine/trust/dragInterval";

/** Force areas (force / dynamic pressure, m^2) of a puck whose mid-plane makes an angle with the stream. */
export interface TiltedForces {
  /** Along the axis, away from the face that the stream meets. */
  readonly normalArea: DragBand;
  /** Along the mid-plane, downstream. */
  readonly tangentialArea: DragBand;
  /** Along the stream. */
  readonly dragArea: DragBand;
  /** Across the stream, towards the side that the face looks away from the stream; 0 at both ends. */
  readonly liftArea: DragBand;
}

/** rad; a disc's normal force hardly falls from face-on down to here (Hoerner 1965, ch. 3, from memory, low confidence). */
const plateauAngle = SHORT_BODY_NUMBERS.plateauAngle.value;

/**
 * Forces at a tilt between edge-on (0) and face-on (pi/2). Along the mid-plane: the edge-on force times cos^2 (cross-flow
 * principle, Hoerner 1965, ch. 3). Along the axis: the face-on force times, at expected, (4 + pi) sin / (4 + pi sin) for an
 * inclined plate (Rayleigh 1876, Phil. Mag. 2, 430-441); low, sin^2 (cross-flow principle); high, the larger of the plate
 * and of sin / sin 45, at most 1 (plateau of a disc).
 * @param edgeOn drag area edge-on, m^2
 * @param faceOn drag area face-on, m^2
 * @param tilt   rad, 0 to pi/2
 */
export function tiltedForces(edgeOn: DragBand, faceOn: DragBand, tilt: number): TiltedForces {
  if (!(tilt >= 0 && tilt <= Math.PI / 2)) throw new RangeError(`tilt is ${tilt} rad; it must be 0 to pi/2.`);
  const sin = Math.sin(tilt);
  const cos = Math.cos(tilt);
  const plate = ((4 + Math.PI) * sin) / (4 + Math.PI * sin);
  const normalArea = {
    low: faceOn.low * sin * sin,
    expected: faceOn.expected * plate,
    high: faceOn.high * Math.max(plate, Math.min(1, sin / Math.sin(plateauAngle))),
  };
  const tangentialArea = {
    low: edgeOn.low * cos * cos,
    expected: edgeOn.expected * cos * cos,
    high: edgeOn.high * cos * cos,
  };
  return {
    normalArea,
    tangentialArea,
    dragArea: {
      low: normalArea.low * sin + tangentialArea.low * cos,
      expected: normalArea.expected * sin + tangentialArea.expected * cos,
      high: normalArea.high * sin + tangentialArea.high * cos,
    },
    liftArea: {
      low: normalArea.low * cos - tangentialArea.high * sin,
      expected: normalArea.expected * cos - tangentialArea.expected * sin,
      high: normalArea.high * cos - tangentialArea.low * sin,
    },
  };
}
