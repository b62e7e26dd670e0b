import { problem, type Result, success } from "../result";
import type { Regime } from "../solve/solution";
import { coverageFactor } from "../tunnel/studentT";
import { regimes } from "../uncertainty/bandTable";
import type { SetComparison } from "./compareSet";
import type { MeasurementSet } from "./measurement";
import { type Banded, coverage } from "./normalisedError";
import { type FamilyMember, notSameFamily } from "./sameFamily";

/** Measured / predicted drag in one regime. */
export interface RegimeFactor {
  readonly regime: Regime;
  readonly factor: number;
  /** Of the factor, about 95 %: scatter of the points by Student's t and the measurement's own (k = 2), in squares. */
  readonly expandedUncertainty: number;
  readonly count: number;
  /** Points that lie beyond both bands: then the cause should be looked for before anything is carried. */
  readonly exceedingCount: number;
  /** Reynolds numbers of the points; it is carried to none outside. */
  readonly from: number;
  readonly to: number;
}

/** What a measurement says about the engine's drag of its design, to be carried to designs of the same family. */
export interface MeasuredCorrection {
  readonly measurement: string;
  readonly source: string;
  readonly member: FamilyMember;
  readonly factors: readonly RegimeFactor[];
  /** Why a regime with points has no factor, in sentences. */
  readonly leftOut: readonly string[];
}

/** A corrected drag coefficient; `label` goes wherever the number goes. */
export interface CorrectedDrag extends Banded {
  readonly factor: number;
  readonly expandedUncertainty: number;
  readonly label: string;
}

/** A factor less certain than this part of itself is not carried (own choice). */
const largestUncertainty = 0.3;
const fewestPoints = 2;
const confidence = 0.95;
/** Half-width of a central 90 % interval over an expanded uncertainty (k = 2). */
const ninetyOfExpanded = 1.645 / coverage;

/**
 * The correction of a compared set: mean of measured / predicted in every regime with two points or more. The prediction
 * has the test's own ends and walls in it, so the factor is that of the endless section in an unbounded stream.
 * @returns a problem where no regime has a factor that is certain enough
 */
export function measuredCorrection(
  set: MeasurementSet,
  comparison: SetComparison,
  description: FamilyMember["description"],
): Result<MeasuredCorrection> {
  const factors: RegimeFactor[] = [];
  const leftOut: string[] = [];
  for (const regime of regimes) {
    const found = regimeFactor(comparison, regime);
    if (found === null) continue;
    if (typeof found === "string") leftOut.push(found);
    else factors.push(found);
  }
  if (factors.length === 0) {
    const reason = leftOut.length === 0 ? "No point could be predicted." : leftOut.join(" ");
    return problem("no-correction", `"${set.name}" gives no correction. ${reason}`);
  }
  const { name: measurement, source } = set;
  return success({ measurement, source, member: { description, settings: comparison.settings }, factors, leftOut });
}

function regimeFactor({ points }: SetComparison, regime: Regime): RegimeFactor | string | null {
  const found = points.flatMap(({ measured, predicted, residual }) =>
    predicted?.regime === regime
      ? [{ measured, residual, ratio: measured.dragCoefficient / predicted.dragCoefficient }]
      : [],
  );
  const count = found.length;
  if (count === 0) return null;
  if (count < fewestPoints) return `The ${regime} regime has one point; a factor needs ${fewestPoints} or more.`;
  const factor = found.reduce((sum, { ratio }) => sum + ratio, 0) / count;
  const scatter = Math.sqrt(found.reduce((sum, { ratio }) => sum + (ratio - factor) ** 2, 0) / (count - 1));
  // Points of one test share most of their uncertainty, so that averaging does not make it smaller.
  const own =
    found.reduce((sum, { measured, ratio }) => {
      return sum + (ratio * (measured.standardUncertainty ?? 0)) / measured.dragCoefficient;
    }, 0) / count;
  const expandedUncertainty = Math.hypot(
    (coverageFactor(confidence, count - 1) * scatter) / Math.sqrt(count),
    coverage * own,
  );
  if (expandedUncertainty > largestUncertainty * factor) {
    return `The ${regime} regime has a factor of ${factor.toFixed(2)} ± ${expandedUncertainty.toFixed(2)}: too uncertain to carry (the limit is ${largestUncertainty * 100} %).`;
  }
  const reynolds = found.map(({ measured }) => measured.reynolds);
  const exceedingCount = found.filter(({ residual }) => residual?.exceedsBothBands).length;
  return {
    regime,
    factor,
    expandedUncertainty,
    count,
    exceedingCount,
    from: Math.min(...reynolds),
    to: Math.max(...reynolds),
  };
}

/**
 * Carries a correction to a drag coefficient of the engine. The band moves with the factor and is widened by the factor's
 * uncertainty; it is never narrowed, as one measured design does not show the engine's errors on another.
 * @param predicted of an endless section in an unbounded stream
 * @returns a problem with the reason where the correction does not hold: another family, regime or Reynolds range
 */
export function carryCorrection(
  correction: MeasuredCorrection,
  member: FamilyMember,
  reynolds: number,
  predicted: Banded & { readonly regime: Regime },
): Result<CorrectedDrag> {
  const unlike = notSameFamily(correction.member, member);
  if (unlike !== null) return notCarried(correction, unlike);
  const found = correction.factors.find(({ regime }) => regime === predicted.regime);
  if (found === undefined) return notCarried(correction, `It has no factor for the ${predicted.regime} regime.`);
  const { factor, expandedUncertainty, from, to } = found;
  if (!(reynolds >= from * (1 - slack) && reynolds <= to * (1 + slack))) {
    return notCarried(
      correction,
      `Re ${text(reynolds)} is outside ${text(from)} to ${text(to)}, where the ${predicted.regime} regime was measured.`,
    );
  }
  const { dragCoefficient, low, high } = predicted;
  const added = ninetyOfExpanded * expandedUncertainty * dragCoefficient;
  const corrected = factor * dragCoefficient;
  return success({
    dragCoefficient: corrected,
    low: Math.max(0, corrected - Math.hypot(factor * (dragCoefficient - low), added)),
    high: corrected + Math.hypot(factor * (high - dragCoefficient), added),
    factor,
    expandedUncertainty,
    label: correctionLabel(correction, found),
  });
}

const slack = 1e-9;

export function correctionLabel(
  { measurement }: Pick<MeasuredCorrection, "measurement">,
  {
    factor,
    expandedUncertainty,
    exceedingCount,
  }: Pick<RegimeFactor, "factor" | "expandedUncertainty" | "exceedingCount">,
): string {
  const warning = exceedingCount === 0 ? "" : "; it lies beyond both bands: look for the cause first";
  return `corrected by measurement "${measurement}", factor ${factor.toFixed(2)} ± ${expandedUncertainty.toFixed(2)} (k = ${coverage}), same family${warning}`;
}

function notCarried({ measurement }: MeasuredCorrection, reason: string) {
  return problem("not-carried", `not corrected by measurement "${measurement}": ${reason}`);
}

function text(reynolds: number): string {
  return reynolds.toExponential(2).replace("e+", "e");
}
