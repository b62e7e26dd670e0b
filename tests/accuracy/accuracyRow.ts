import type { Regime } from "../../shared/engine/solution";
import {
  type Grade,
  type Group,
  type HowObtained,
  type PublishedSource,
  type PublishedValue,
  scatterHalfWidth,
} from "../published/publishedValue";
import type { Quantity } from "../published/quantity";
import type { Half } from "./halves";
import type { Prediction } from "./prediction";
import { conditionText, kindTexts } from "./quantityText";

/** One published value beside the engine's. */
export interface AccuracyRow {
  readonly source: string;
  readonly group: Group;
  readonly quantity: Quantity["kind"];
  readonly condition: string;
  readonly published: number;
  /** Half-width of the source's own scatter, in the unit of the value. */
  readonly scatter: number;
  readonly grade: Grade;
  readonly howObtained: HowObtained;
  readonly predicted: number | null;
  readonly regime: Regime | null;
  /** Predicted less published: over the published value, or in its unit (see errorMeasure). */
  readonly error: number | null;
  readonly errorMeasure: "relative" | "absolute";
  readonly insideScatter: boolean | null;
  /** Which half of a calibrated group the value is in; null in groups that no constant was fitted on. */
  readonly half: Half | null;
  readonly note: string | null;
  /** The 90 % band stated for a drag coefficient of a section. */
  readonly band: StatedBand | null;
}

export interface StatedBand {
  readonly low: number;
  readonly high: number;
  /** True when the band holds the states on both sides of a drag crisis. */
  readonly spansCrisis: boolean;
  /** Which half of the values for the bands this one is in. */
  readonly half: Half;
  /** Whether the published value lies in the band. */
  readonly covers: boolean;
}

export function accuracyRow(
  source: PublishedSource,
  value: PublishedValue,
  half: Half | null,
  prediction: Prediction,
  band: StatedBand | null = null,
): AccuracyRow {
  const { error: errorMeasure } = kindTexts[value.quantity.kind];
  const scatter = scatterHalfWidth(value);
  const difference = prediction.value === null ? null : prediction.value - value.value;
  const scale = errorMeasure === "relative" ? value.value : 1;
  return {
    source: source.name,
    group: value.group,
    quantity: value.quantity.kind,
    condition: conditionText(value.quantity),
    published: value.value,
    scatter,
    grade: value.grade,
    howObtained: value.howObtained,
    predicted: prediction.value,
    regime: prediction.regime,
    error: difference === null ? null : difference / scale,
    errorMeasure,
    insideScatter: difference === null ? null : Math.abs(difference) <= scatter,
    half,
    note: prediction.note ?? value.remark ?? null,
    band,
  };
}
