import { type DragBand, scaleBand } from "../../engine/trust/dragInterval";
import { plannedRuns } from "./plannedRuns";
import { plannedRepeats } from "./planRepeats";
import { speedsAboutCrises } from "./planSpeeds";
import { type PredictedDrag, predictedAt, type SpeedDirection } from "./predictedDrag";
import type { TunnelFacility } from "./tunnelFacility";
import type { TunnelReference } from "./tunnelShape";

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

/** Repeats where the balance's noise is not known: the fewest that show their own scatter. */
const repeatsWithoutNoise = 3;

/**
 * A test plan: zero readings and runs of the support alone, then the model over the speeds in both directions, with
 * zero readings before and after every sweep.
 * @param prediction in the tunnel's turbulence; null when nothing was solved
 */
export function planRuns(
  settings: PlanSettings,
  facility: TunnelFacility,
  reference: TunnelReference,
  prediction: PredictedDrag | null,
): TunnelPlan {
  const { fluid, balance } = facility;
  const reynoldsPerSpeed = reference.length / fluid.kinematicViscosity;
  const speeds =
    settings.speeds ??
    speedsAboutCrises(
      settings.slowestSpeed,
      settings.fastestSpeed,
      settings.speedCount,
      prediction?.crises ?? [],
      reynoldsPerSpeed,
    );
  const scatter = balance.noise === null ? null : Math.hypot(balance.noise, balance.resolution / Math.sqrt(12));
  const planned = speeds.map((speed): PlannedSpeed => {
    const dynamicPressure = 0.5 * fluid.density * speed * speed;
    const coefficient = prediction === null ? null : predictedAt(prediction, speed * reynoldsPerSpeed, "rising");
    const force = coefficient === null ? null : scaleBand(coefficient, dynamicPressure * reference.area);
    const repeats =
      scatter === null || force === null || !(force.best > 0)
        ? null
        : plannedRepeats(
            scatter,
            settings.wantedHalfWidth * force.best,
            settings.confidence,
            Math.max(2, settings.mostRepeats),
          );
    return {
      speedMetresPerSecond: speed,
      reynolds: speed * reynoldsPerSpeed,
      dynamicPressurePascals: dynamicPressure,
      expectedForceNewtons: force,
      repeats: repeats?.repeats ?? Math.min(repeatsWithoutNoise, Math.max(2, settings.mostRepeats)),
      halfWidthPercent: repeats === null || force === null ? null : (100 * repeats.halfWidth) / force.best,
      isReached: repeats?.isReached ?? false,
    };
  });
  const runs = plannedRuns(planned, settings);
  return {
    speeds: planned,
    runs,
    order: settings.order,
    seed: settings.seed,
    confidencePercent: 100 * settings.confidence,
    wantedHalfWidthPercent: 100 * settings.wantedHalfWidth,
    minutes: runs.length * settings.minutesPerRun,
    notes: planNotes(planned, settings, scatter, prediction),
  };
}

function planNotes(
  speeds: readonly PlannedSpeed[],
  settings: PlanSettings,
  scatter: number | null,
  prediction: PredictedDrag | null,
): string[] {
  const notes: string[] = [];
  if (prediction === null) notes.push("Nothing was predicted: speeds are at equal ratios and no force is expected.");
  else if (prediction.crises.length === 0)
    notes.push("No drag crisis is predicted in reach: speeds are at equal ratios.");
  if (scatter === null) {
    notes.push(`The balance's noise is not stated: ${repeatsWithoutNoise} repeats, so that the scatter shows itself.`);
  }
  const missed =
    scatter === null
      ? []
      : speeds.filter(({ isReached, expectedForceNewtons }) => !isReached && expectedForceNewtons !== null);
  if (missed.length > 0) {
    const list = missed.map(({ speedMetresPerSecond }) => speedMetresPerSecond).join(", ");
    notes.push(
      `At ${list} m/s not even ${Math.max(2, settings.mostRepeats)} repeats reach ${100 * settings.wantedHalfWidth} %: a more sensitive balance or a larger model is needed.`,
    );
  }
  if (!settings.bothDirections) notes.push("One direction of speed only: hysteresis of the crisis will not show.");
  if (settings.order === "randomised") {
    notes.push("Randomised: bring the flow to rest, or to its top speed, before each point as the remark says.");
  }
  return notes;
}
