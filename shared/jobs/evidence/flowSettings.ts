import { percentOf } from "../../numerics/degreesAndPercent";
import type { MeasuredConditions } from "./measurement";

/** What the prediction of a measured point depends on besides the section and the Reynolds number. */
export interface FlowSettings {
  /** Fraction. */
  readonly turbulenceIntensity: number;
  /** ks / D. */
  readonly sandGrainRoughnessRatio: number;
  /** Length / width of a body with two free ends; null for an endless one. */
  readonly lengthToWidth: number | null;
  /** Model width / tunnel height whose effect is still in the measured values; 0 for none. */
  readonly blockageRatio: number;
}

/** Taken where a set states no turbulence: that of a good low-turbulence tunnel (common practice, no source). */
export const assumedTurbulence = 0.001;

/** Taken where a set states no roughness: a polished wall, the smoothest of EN 1991-1-4, figure 7.28. */
export const assumedRoughnessRatio = 1e-5;

/** The settings that a set's conditions state, with the assumptions for what they leave open. */
export function statedSettings(conditions: MeasuredConditions): FlowSettings {
  return {
    turbulenceIntensity: conditions.turbulenceIntensity ?? assumedTurbulence,
    sandGrainRoughnessRatio: conditions.sandGrainRoughnessRatio ?? assumedRoughnessRatio,
    lengthToWidth: conditions.ends === "free" ? conditions.lengthToWidth : null,
    blockageRatio: conditions.blockageCorrected ? 0 : (conditions.blockageRatio ?? 0),
  };
}

/** What had to be assumed because a set does not state it, in sentences. */
export function assumptions(conditions: MeasuredConditions): string[] {
  const found: string[] = [];
  if (conditions.turbulenceIntensity === null) {
    found.push(`Turbulence is not stated; ${percentOf(assumedTurbulence)} % is assumed.`);
  }
  if (conditions.sandGrainRoughnessRatio === null) {
    found.push(`Roughness is not stated; ks/D ${assumedRoughnessRatio} (polished) is assumed.`);
  }
  if (conditions.ends === "free" && conditions.lengthToWidth === null) {
    found.push("The ends are free but length/width is not stated; the prediction is that of an endless body.");
  }
  if (!conditions.blockageCorrected && conditions.blockageRatio === null) {
    found.push("Blockage is not stated; none is assumed.");
  }
  return found;
}
