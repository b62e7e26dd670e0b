import type { TunnelReduction } from "../tunnel/public";
import type { MeasuredPoint } from "./measurement";
import type { CaseMeasurement } from "./measurementCase";

/** What a comparison takes of a reduced test. */
export type TunnelPoints = Pick<TunnelReduction, "points" | "blockageRatio" | "correction">;

/** A set that takes its points from the case's tunnel test with them in place; any other as it is. */
export function withTunnelPoints(measurement: CaseMeasurement, tunnel: TunnelPoints): CaseMeasurement {
  if (!measurement.fromTunnel) return measurement;
  const { set } = measurement;
  const conditions = {
    ...set.conditions,
    blockageRatio: tunnel.blockageRatio,
    blockageCorrected: tunnel.correction !== "none",
  };
  return { ...measurement, set: { ...set, conditions, points: measuredFromTunnel(tunnel) } };
}

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
