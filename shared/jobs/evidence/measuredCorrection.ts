import type { Regime } from "../../engine/solution";
import { regimes } from "../../engine/trust/bandTable";
import { percentOf } from "../../numerics/degreesAndPercent";
import { problem, type Result, success } from "../../result";
import { mean, standardDeviation } from "../../statistics/sample";
import { coverageFactor } from "../../statistics/studentT";
import type { MeasuredCorrection, RegimeFactor } from "./carriedCorrection";
import type { SetComparison } from "./compareSet";
import type { MeasurementSet } from "./measurement";
import { coverage } from "./normalisedError";
import type { FamilyMember } from "./sameFamily";

/** A factor less certain than this part of itself is not carried (own choice). */
const largestUncertainty = 0.3;
const fewestPoints = 2;
const confidence = 0.95;

/**
 * The correction of a compared set: mean of measured / predicted in every regime with two points or more. The prediction
 * has the test's own ends and walls in it, so the factor is that of the endless section in an unbounded stream.
 * @param description of the measured section; null for a puck, whose offset is carried to none
 * @returns a problem where no regime has a factor that is certain enough
 */
export function measuredCorrection(
  set: MeasurementSet,
  comparison: SetComparison,
  description: FamilyMember["description"] | null,
): Result<MeasuredCorrection> {
  if (description === null) {
    return problem("no-correction", `"${set.name}" is of a puck; only offsets of sections are carried.`);
  }
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
  const ratios = found.map(({ ratio }) => ratio);
  const factor = mean(ratios);
  const scatter = standardDeviation(ratios);
  // Points of one test share most of their uncertainty, so that averaging does not make it smaller.
  const own = mean(
    found.map(({ measured, ratio }) => (ratio * (measured.standardUncertainty ?? 0)) / measured.dragCoefficient),
  );
  const expandedUncertainty = Math.hypot(
    (coverageFactor(confidence, count - 1) * scatter) / Math.sqrt(count),
    coverage * own,
  );
  if (expandedUncertainty > largestUncertainty * factor) {
    return `The ${regime} regime has a factor of ${factor.toFixed(2)} ± ${expandedUncertainty.toFixed(2)}: too uncertain to carry (the limit is ${percentOf(largestUncertainty)} %).`;
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
