import type { Regime } from "../../shared/engine/solution";
import {
  experimentOf,
  type Grade,
  type Group,
  type HowObtained,
  type PublishedSource,
  type PublishedValue,
  scatterHalfWidth,
  scatterRange,
} from "../published/publishedValue";
import type { Quantity } from "../published/quantity";
import type { Prediction } from "./prediction";
import { conditionText, kindTexts } from "./quantityText";
import type { Half, Part } from "./sourceSplit";

/** One published value beside the engine's. */
export interface AccuracyRow {
  readonly source: string;
  /** What the source's values go back to, see PublishedSource. */
  readonly experiment: string;
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
  /** Which part of a calibrated group the value is in; null in other groups and where the value is only shown. */
  readonly part: Part | null;
  /** Why the value is in no figure that judges the engine; null when it is. */
  readonly shownOnly: string | null;
  readonly note: string | null;
  /** The 90 % band stated for a drag coefficient of a section. */
  readonly band: StatedBand | null;
}

export interface StatedBand {
  readonly low: number;
  readonly high: number;
  /** True when the band holds the states on both sides of a drag crisis. */
  readonly spansCrisis: boolean;
  /** Which half of the values for the bands this one is in; null where the value is only shown. */
  readonly half: Half | null;
  /** Whether the published value lies in the band. */
  readonly covers: boolean;
}

export function accuracyRow(
  source: PublishedSource,
  value: PublishedValue,
  part: Part | null,
  prediction: Prediction,
  band: StatedBand | null = null,
): AccuracyRow {
  const { error: errorMeasure } = kindTexts[value.quantity.kind];
  const scatter = scatterHalfWidth(value);
  const [lowest, highest] = scatterRange(value);
  const difference = prediction.value === null ? null : prediction.value - value.value;
  const scale = errorMeasure === "relative" ? value.value : 1;
  return {
    source: source.name,
    experiment: experimentOf(source),
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
    insideScatter: prediction.value === null ? null : prediction.value >= lowest && prediction.value <= highest,
    part,
    shownOnly: value.shownOnly ?? null,
    note: prediction.note ?? value.remark ?? null,
    band,
  };
}
