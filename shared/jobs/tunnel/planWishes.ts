import { fractionOr } from "../../numerics/degreesAndPercent";
import type { TunnelBlockDocument } from "./tunnelBlockDocument";
import type { PlanWishes } from "./tunnelCase";

/** Values of keys that a case leaves out. */
export const planDefaults: PlanWishes = {
  speeds: null,
  speedCount: 10,
  wantedHalfWidth: 0.02,
  confidence: 0.95,
  mostRepeats: 12,
  bothDirections: true,
  order: "sweeps",
  tareRepeats: 2,
  runsBetweenZeros: 8,
  minutesPerRun: 3,
  seed: 1,
};

/** What a case wishes of a plan, with the defaults in place of what it leaves out. */
export function planWishes(plan: TunnelBlockDocument["plan"]): PlanWishes {
  const speeds = plan?.speedsMetresPerSecond;
  return {
    speeds: speeds === undefined ? planDefaults.speeds : [...new Set(speeds)].sort((a, b) => a - b),
    speedCount: plan?.speedCount ?? planDefaults.speedCount,
    wantedHalfWidth: fractionOr(plan?.wantedHalfWidthPercent, planDefaults.wantedHalfWidth),
    confidence: fractionOr(plan?.confidencePercent, planDefaults.confidence),
    mostRepeats: plan?.mostRepeats ?? planDefaults.mostRepeats,
    bothDirections: plan?.bothDirections ?? planDefaults.bothDirections,
    order: plan?.order ?? planDefaults.order,
    tareRepeats: plan?.tareRepeats ?? planDefaults.tareRepeats,
    runsBetweenZeros: plan?.runsBetweenZeros ?? planDefaults.runsBetweenZeros,
    minutesPerRun: plan?.minutesPerRun ?? planDefaults.minutesPerRun,
    seed: plan?.seed ?? planDefaults.seed,
  };
}
