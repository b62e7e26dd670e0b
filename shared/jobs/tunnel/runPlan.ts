import { scaleBand } from "../../engine/trust/dragInterval";
import { plannedRuns } from "./plannedRuns";
import type { PlannedSpeed, PlanSettings, TunnelPlan } from "./plannedTest";
import { plannedRepeats } from "./planRepeats";
import { speedsAboutCrises } from "./planSpeeds";
import { type PredictedDrag, predictedAt } from "./predictedDrag";
import type { TunnelFacility } from "./tunnelFacility";
import type { TunnelReference } from "./tunnelShape";

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
      scatter === null || force === null || !(force.expected > 0)
        ? null
        : plannedRepeats(
            scatter,
            settings.wantedHalfWidth * force.expected,
            settings.confidence,
            Math.max(2, settings.mostRepeats),
          );
    return {
      speedMetresPerSecond: speed,
      reynolds: speed * reynoldsPerSpeed,
      dynamicPressurePascals: dynamicPressure,
      expectedForceNewtons: force,
      repeats: repeats?.repeats ?? Math.min(repeatsWithoutNoise, Math.max(2, settings.mostRepeats)),
      halfWidthPercent: repeats === null || force === null ? null : (100 * repeats.halfWidth) / force.expected,
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
