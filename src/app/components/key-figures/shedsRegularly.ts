import { QUIET_WAKE_GAP_RATIO } from "../../../../shared/engine/flow/quietWake";
import type { LiveSolution } from "../../../../shared/engine/section/solveLive";

/** False so near a floor that it keeps the wake quiet: the Strouhal number then has no meaning. */
export function shedsRegularly({ floor }: LiveSolution): boolean {
  return floor === null || floor.gapRatio >= QUIET_WAKE_GAP_RATIO;
}
