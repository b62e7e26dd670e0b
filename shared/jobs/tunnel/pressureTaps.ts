import type { Contour } from "../../engine/geometry/contour";
import { problem, type Result, success } from "../../result";
import { type FirstOrderUncertainty, propagateFirstOrder } from "../../statistics/firstOrder";
import { mean, squaresAbout } from "../../statistics/sample";
import { exactInput } from "../../statistics/uncertainInput";
import { contourPosition, type TapPlace } from "./tapPlace";

/** A tap as measured. */
export interface TapReading {
  readonly name: string;
  readonly row: number;
  readonly place: TapPlace;
  /** On the dynamic pressure of the free stream, over its static pressure. */
  readonly pressureCoefficient: number;
}

/** A predicted pressure distribution: coefficient at an arc length from the nose, m, counter-clockwise. */
export type PredictedPressure = (arc: number) => number;

export interface TapResult {
  readonly name: string;
  readonly row: number;
  /** Arc length from the nose, counter-clockwise, / perimeter. */
  readonly arcShare: number;
  readonly xMetres: number;
  readonly yMetres: number;
  readonly measured: number;
  readonly expandedUncertainty: number;
  readonly predicted: number | null;
  /** Measured less predicted. */
  readonly residual: number | null;
}

export interface TapSurvey {
  readonly taps: readonly TapResult[];
  /** Drag of the pressures, per span, on the width across the stream. */
  readonly pressureDrag: FirstOrderUncertainty;
  /** False where the taps leave a gap so wide that the drag has no uncertainty worth printing. */
  readonly isCovered: boolean;
  /** Of the predicted pressures read at the same taps, and along the whole contour: their difference is what the taps miss. */
  readonly predictedDragAtTaps: number | null;
  readonly predictedDrag: number | null;
  readonly meanResidual: number | null;
  readonly rootMeanSquareResidual: number | null;
  /** Widest gap between neighbouring taps / perimeter. */
  readonly widestGap: number;
  readonly notes: readonly string[];
}

/** Points of the contour at which pressures are put together. */
const stations = 1440;
const fewestTaps = 4;
/** Gap / perimeter above which a distribution is thinly covered. A choice, no source. */
const wideGap = 0.1;
/** Gap / perimeter above which nothing is said of the drag's uncertainty: taps on half a ring leave one of a half. A choice, no source. */
const tooWideGap = 0.3;

/**
 * Pressure taps of a section: each against the prediction, and all together as a drag. Between taps the coefficient is
 * linear in arc length round the contour.
 * @param width                    across the stream, m
 * @param standardUncertainty      of one tap's coefficient
 * @param dynamicPressureShare     standard uncertainty of the dynamic pressure, a fraction, common to all taps
 */
export function surveyTaps(
  readings: readonly TapReading[],
  contour: Contour,
  width: number,
  standardUncertainty: number,
  dynamicPressureShare: number,
  predicted: PredictedPressure | null,
  coverage = 0.95,
  isMirrored = false,
): Result<TapSurvey> {
  if (isMirrored && !contour.mirrorSymmetric) {
    return problem(
      "taps",
      "the section is not its own mirror image, so that its taps cannot be mirrored; leave isMirrored out",
    );
  }
  if (readings.length < fewestTaps) {
    return problem("taps", `there are ${readings.length} taps; a survey needs ${fewestTaps} or more`);
  }
  const own = readings.map((reading) => ({ reading, arc: contourPosition(contour, reading.place) }));
  const placed = (isMirrored ? withMirrorImages(own, contour.perimeter) : own).sort((a, b) => a.arc - b.arc);
  const twin = placed.findIndex(({ arc }, i) => i > 0 && arc - placed[i - 1].arc < 1e-9 * contour.perimeter);
  if (twin > 0) {
    const [a, b] = [placed[twin - 1].reading, placed[twin].reading];
    return problem("taps", `the taps ${a.name} (row ${a.row}) and ${b.name} (row ${b.row}) are at the same place`);
  }
  const arcs = placed.map(({ arc }) => arc);
  const weights = dragWeights(contour, width, arcs);
  const names = placed.map(({ reading }) => reading);
  // A tap and its mirror image are one reading: their errors are one.
  const inputs = [
    ...readings.map((reading, i) => ({
      ...exactInput(`tap${i}`, reading.name, reading.pressureCoefficient),
      standardUncertainty,
    })),
    { ...exactInput("dynamicPressure", "dynamic pressure", 1), standardUncertainty: dynamicPressureShare },
  ];
  const inputWeights = readings.map((reading) =>
    weights.reduce((sum, weight, i) => (names[i] === reading ? sum + weight : sum), 0),
  );
  const n = arcs.length;
  const readCount = readings.length;
  const drag = propagateFirstOrder(
    (x) => inputWeights.reduce((sum, w, i) => sum + w * x[i], 0) / x[readCount],
    inputs,
    [],
    coverage,
  );
  if (!drag.ok) return drag;
  const taps = placed.map(({ reading, arc }): TapResult => {
    const point = contour.at(arc);
    const expected = predicted === null ? null : predicted(arc);
    const own = Math.hypot(standardUncertainty, reading.pressureCoefficient * dynamicPressureShare);
    return {
      name: reading.name,
      row: reading.row,
      arcShare: arc / contour.perimeter,
      xMetres: point.x - contour.centroid[0],
      yMetres: point.y - contour.centroid[1],
      measured: reading.pressureCoefficient,
      expandedUncertainty: drag.value.coverageFactor * own,
      predicted: expected,
      residual: expected === null ? null : reading.pressureCoefficient - expected,
    };
  });
  const residuals = taps.flatMap(({ residual }) => (residual === null ? [] : [residual]));
  const gaps = arcs.map((arc, i) => (i === 0 ? arc + contour.perimeter - arcs[n - 1] : arc - arcs[i - 1]));
  const widestGap = Math.max(...gaps) / contour.perimeter;
  const isKnown = residuals.length > 0;
  return success({
    taps,
    pressureDrag: gatheredTaps(drag.value, readCount),
    isCovered: widestGap <= tooWideGap,
    predictedDragAtTaps: predicted === null ? null : weights.reduce((sum, w, i) => sum + w * predicted(arcs[i]), 0),
    predictedDrag: predicted === null ? null : contourDrag(contour, width, predicted),
    meanResidual: isKnown ? mean(residuals) : null,
    rootMeanSquareResidual: isKnown ? Math.sqrt(squaresAbout(residuals, 0) / residuals.length) : null,
    widestGap,
    notes: gapNotes(widestGap, contour.mirrorSymmetric && !isMirrored),
  });
}

function gapNotes(widestGap: number, canMirror: boolean): string[] {
  if (!(widestGap > wideGap)) return [];
  const gap = `The widest gap between taps is ${(100 * widestGap).toFixed(0)} % of the contour: the drag between them is a guess`;
  if (!(widestGap > tooWideGap)) return [`${gap}.`];
  const ask = canMirror
    ? " If the taps stand on one half and the other half has the same pressures, say so (isMirrored)."
    : "";
  return [`${gap}, and no uncertainty is given across it.${ask}`];
}

/** Taps and their mirror images in the x axis; those on the axis stand once. */
function withMirrorImages<Tap extends { readonly arc: number }>(taps: readonly Tap[], perimeter: number): Tap[] {
  const near = 1e-6 * perimeter;
  const images = taps
    .filter(({ arc }) => arc > near && arc < perimeter - near && Math.abs(arc - perimeter / 2) > near)
    .map((tap) => ({ ...tap, arc: perimeter - tap.arc }));
  return [...taps, ...images.filter(({ arc }) => taps.every((tap) => Math.abs(tap.arc - arc) > near))];
}

/** How much each tap's coefficient adds to the drag coefficient: minus the integral of its hat function times n_x ds / D. */
function dragWeights(contour: Contour, width: number, arcs: readonly number[]): Float64Array {
  const { perimeter } = contour;
  const weights = new Float64Array(arcs.length);
  const step = perimeter / stations;
  let right = 0;
  for (let k = 0; k < stations; k++) {
    const arc = (k + 0.5) * step;
    while (right < arcs.length && arcs[right] < arc) right++;
    const b = right % arcs.length;
    const a = (right + arcs.length - 1) % arcs.length;
    const from = right === 0 ? arcs[a] - perimeter : arcs[a];
    const to = right === arcs.length ? arcs[b] + perimeter : arcs[b];
    const share = (arc - from) / (to - from);
    // Walked counter-clockwise, the outward normal is (tangentY, -tangentX).
    const normal = (-contour.at(arc).tangentY * step) / width;
    weights[a] += (1 - share) * normal;
    weights[b] += share * normal;
  }
  return weights;
}

function contourDrag(contour: Contour, width: number, pressure: PredictedPressure): number {
  const step = contour.perimeter / stations;
  let sum = 0;
  for (let k = 0; k < stations; k++) {
    const arc = (k + 0.5) * step;
    sum -= (pressure(arc) * contour.at(arc).tangentY * step) / width;
  }
  return sum;
}

function gatheredTaps(found: FirstOrderUncertainty, n: number): FirstOrderUncertainty {
  const own = found.parts.slice(0, n);
  const all = {
    ...own[0],
    key: "taps",
    name: `${n} taps`,
    value: 0,
    sensitivity: 0,
    contribution: Math.hypot(...own.map(({ contribution }) => contribution)),
    share: own.reduce((sum, { share }) => sum + share, 0),
  };
  return { ...found, parts: [all, ...found.parts.slice(n)] };
}
