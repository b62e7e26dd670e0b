import type { Problem } from "../../result";
import type { FlowCondition } from "../condition";

/** Ranges of a condition that the engine accepts; the accuracy table says where inside them it was checked. */
export const CONDITION_LIMITS = {
  reynolds: [1e3, 1e8],
  sandGrainRoughnessRatio: [0, 0.05],
  turbulenceIntensity: [0, 0.2],
  tripHeightRatio: [1e-6, 0.1],
} as const;

/** The first thing in a condition that is out of range, or null. */
export function checkCondition(condition: FlowCondition): Problem | null {
  const { reynolds, sandGrainRoughnessRatio, turbulenceIntensity } = CONDITION_LIMITS;
  const problems = [
    outside("reynolds", "Reynolds number", condition.reynolds, reynolds),
    outside("sandGrainRoughnessRatio", "ks/D", condition.sandGrainRoughnessRatio, sandGrainRoughnessRatio),
    outside("turbulenceIntensity", "turbulence intensity", condition.turbulenceIntensity, turbulenceIntensity),
    ...(condition.trips ?? []).flatMap((trip, i) => [
      outside(`trips[${i}].heightRatio`, "trip height / D", trip.heightRatio, CONDITION_LIMITS.tripHeightRatio),
      outside(`trips[${i}].arcRatio`, "trip position / D", trip.arcRatio, [0, 100]),
    ]),
  ];
  return problems.find((found) => found !== null) ?? null;
}

function outside(field: string, name: string, value: number, [low, high]: readonly [number, number]): Problem | null {
  if (value >= low && value <= high) return null;
  return { code: "out-of-range", message: `${name} is ${value}; it must lie between ${low} and ${high}.`, field };
}
