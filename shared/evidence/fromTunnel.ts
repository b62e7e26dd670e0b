import type { TunnelReduction } from "../tunnel/reduceRuns";
import type { MeasuredPoint } from "./measurement";

/**
 * The points of a reduced tunnel test, with the correction that the test reports and their standard uncertainties.
 * Reynolds numbers and coefficients stay on the test's own reference, which must be the width across the stream and the
 * area of width x span: that of a section, or of a puck edge-on.
 */
export function measuredFromTunnel({ points }: Pick<TunnelReduction, "points">): MeasuredPoint[] {
  return points.map(({ reynolds, dragCoefficient, firstOrder, direction }) => ({
    reynolds,
    dragCoefficient,
    standardUncertainty: firstOrder.combinedStandardUncertainty,
    direction,
    strouhal: null,
    basePressureCoefficient: null,
    separationAngleDegrees: null,
  }));
}
