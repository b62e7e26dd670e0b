import type { Study, StudyCondition } from "../compare/public";
import type { NextJob } from "./resolveNext";

/**
 * The condition that the choice is for: the one at the wanted speed and attitude, else that which stands for all of play,
 * else the one with the most conditions taken together, the first of those.
 */
export function decisionCondition({ conditions }: Study, { speed, attitude }: NextJob): StudyCondition | null {
  if (speed !== null || attitude !== null) {
    const fits = ({ condition }: StudyCondition) =>
      (speed === null || condition.speedMetresPerSecond === speed) &&
      (attitude === null || condition.attitude === attitude);
    return conditions.find(fits) ?? null;
  }
  return conditions.find(({ condition }) => condition.attitude === "play") ?? conditions[0] ?? null;
}
