import type { Regime } from "../../engine/solution";
import { problem, type Result, success } from "../../result";
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

/** Half-width of a central 90 % interval over an expanded uncertainty (k = 2). */
const ninetyOfExpanded = 1.645 / coverage;

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
