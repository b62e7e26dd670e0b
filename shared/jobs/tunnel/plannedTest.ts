import type { DragBand } from "../../engine/trust/dragInterval";
import type { SpeedDirection } from "./predictedDrag";

export const runOrders = ["sweeps", "randomised"] as const;
/** "sweeps": speeds rise, then fall; "randomised": every point by itself, approached from rest or from full speed. */
export type RunOrder = (typeof runOrders)[number];

export interface PlanSettings {
  /** m/s, rising; null to spread speedCount of them over the range, closer near a crisis. */
  readonly speeds: readonly number[] | null;
  readonly slowestSpeed: number;
  readonly fastestSpeed: number;
  readonly speedCount: number;
  /** Wanted half-width of the mean drag coefficient's confidence interval, a fraction of it. */
  readonly wantedHalfWidth: number;
  readonly confidence: number;
  readonly mostRepeats: number;
  readonly bothDirections: boolean;
  readonly order: RunOrder;
  readonly tareRepeats: number;
  /** Runs between two zero readings in a randomised order. */
  readonly runsBetweenZeros: number;
  readonly minutesPerRun: number;
  readonly seed: number;
}

export type RunKind = "zero" | "tare" | "model";

export interface PlannedRun {
  readonly run: number;
  readonly kind: RunKind;
  /** null at rest. */
  readonly direction: SpeedDirection | null;
  readonly aimSpeedMetresPerSecond: number | null;
  readonly aimDynamicPressurePascals: number | null;
  readonly expectedForceNewtons: number | null;
  /** Which repeat of this speed and direction, from 1; null at rest. */
  readonly repeat: number | null;
  readonly remark: string;
}

export interface PlannedSpeed {
  readonly speedMetresPerSecond: number;
  readonly reynolds: number;
  readonly dynamicPressurePascals: number;
  readonly expectedForceNewtons: DragBand | null;
  readonly repeats: number;
  /** Half-width of the mean that the balance's noise leaves, % of the expected force; null without noise or force. */
  readonly halfWidthPercent: number | null;
  readonly isReached: boolean;
}

export interface TunnelPlan {
  readonly speeds: readonly PlannedSpeed[];
  readonly runs: readonly PlannedRun[];
  readonly order: RunOrder;
  readonly seed: number;
  readonly confidencePercent: number;
  readonly wantedHalfWidthPercent: number;
  readonly minutes: number;
  readonly notes: readonly string[];
}
