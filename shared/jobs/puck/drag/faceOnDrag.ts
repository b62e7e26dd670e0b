import { SHORT_BODY_NUMBERS } from "../../../engine/constants/shortBodyNumbers";
import { type DragBand, dragOn, type PuckDrag } from "../../../engine/trust/dragInterval";
import { valueInTable } from "../../../numerics/tableLookup";
import { problem, type Result, success } from "../../../result";
import { edgeReach } from "../body/outerShape";
import type { PuckSpec } from "../body/puckSpec";

/**
 * Drag coefficient of a sharp flat-faced cylinder along its axis by length / diameter, on the area pi d^2 / 4.
 * Source: Kritzinger (2004), measurements as digitised, reading error about 0.04.
 */
export const axialCylinderDrag: readonly (readonly [number, number])[] = [
  [0, 1.17],
  [0.0957, 1.17],
  [0.192, 1.16],
  [0.357, 1.13],
  [0.432, 1.12],
  [0.595, 1.07],
  [0.747, 1.02],
  [0.882, 0.971],
  [1.06, 0.911],
  [1.3, 0.856],
  [1.55, 0.83],
  [1.81, 0.82],
  [2.47, 0.819],
  [3.1, 0.818],
  [4.22, 0.815],
];

const axialReadingError = SHORT_BODY_NUMBERS.axialReadingError.value;

/**
 * Drag coefficient of a long blunt cylinder along its axis by front edge radius / diameter.
 * Source: Hoerner, Fluid-Dynamic Drag (1965), ch. 3 (from memory, low confidence: 0.8, 0.4-0.5, 0.2-0.25).
 */
export const roundedFrontDrag: readonly (readonly [number, number])[] = [
  [0, 0.8],
  [0.05, 0.45],
  [0.15, 0.225],
];

/** Drag coefficient of a sharp flat-faced cylinder along its axis, with its reading error. */
export function sharpCylinderDrag(lengthToDiameter: number): DragBand {
  const expected = interpolate(axialCylinderDrag, lengthToDiameter);
  return { low: expected - axialReadingError, expected, high: expected + axialReadingError };
}

/** Drag coefficient of a blunt cylinder whose flow follows its rounded front edge: the table within its own spread. */
export function attachedFrontDrag(edgeRadiusToDiameter: number): DragBand {
  const expected = interpolate(roundedFrontDrag, edgeRadiusToDiameter);
  return { low: (1 - roundedFrontSpread) * expected, expected, high: (1 + roundedFrontSpread) * expected };
}

/** Of the values remembered, 0.4 to 0.5 and 0.2 to 0.25. */
const roundedFrontSpread = SHORT_BODY_NUMBERS.roundedFrontSpread.value;

/**
 * Drag of a puck moving along its axis by tables alone, on its face area pi d^2 / 4, where its flow is not solved. A sharp edge has the axial-cylinder table. A
 * rounded one has less: expected, the table less the drop that rounding brings on a long cylinder; low, the table times the
 * ratio of that drop; high, no relief, as for a radius too small for the flow to follow at low Reynolds numbers.
 * A bevel or free profile counts as a radius of the smaller of its two insets: an assumption without a source.
 */
export function faceOnDrag(spec: PuckSpec): Result<PuckDrag> {
  const { diameterMetres: d, thicknessMetres: t } = spec;
  if (!(d > 0 && t > 0)) return problem("face-on", "diameter and thickness must be above 0", "diameterMetres");
  const slenderness = t / d;
  const [longest] = axialCylinderDrag[axialCylinderDrag.length - 1];
  if (slenderness > longest) {
    return problem(
      "face-on",
      `thickness / diameter is ${slenderness}; the table ends at ${longest}`,
      "thicknessMetres",
    );
  }
  const reach = edgeReach(spec);
  const edgeRatio = Math.min(reach.radial, reach.axial) / d;
  const sharp = interpolate(axialCylinderDrag, slenderness);
  const rounded = interpolate(roundedFrontDrag, edgeRatio);
  const blunt = roundedFrontDrag[0][1];
  const coefficient = {
    low: (sharp - axialReadingError) * (rounded / blunt),
    expected: sharp - (blunt - rounded),
    high: sharp + axialReadingError,
  };
  const area = (Math.PI / 4) * d * d;
  const scaled = { low: coefficient.low * area, expected: coefficient.expected * area, high: coefficient.high * area };
  const notes = ["From published tables of axial cylinders at Re of 1e4 and more; no flow was solved."];
  if (edgeRatio > 0)
    notes.push("The relief by edge rounding was measured on long cylinders: low confidence on a short one.");
  return success(dragOn(scaled, area, "face area", notes));
}

function interpolate(table: readonly (readonly [number, number])[], x: number): number {
  return valueInTable(
    table.map(([at]) => at),
    table.map(([, value]) => value),
    x,
  );
}
