import type { FlowCondition } from "../condition";
import { TRUST_NUMBERS } from "../constants/trustNumbers";
import type { ConditionOutcome, Regime, SectionState } from "../solution";
import type { PreparedSection } from "../solve/preparedSection";
import { solveCondition } from "../solve/solveCondition";

/** What a band needs to know about a state. */
export type DragState = Pick<SectionState, "regime" | "dragCoefficient">;

/** A point of the curve this near to an end of the range, as a ratio of Reynolds numbers, stands for the end. */
const sameEnd = TRUST_NUMBERS.sameEnd.value;

/**
 * All states that a section has at a condition and within a factor of its Reynolds number. Points of the curve are used
 * where there are some; the two ends of the range are solved unless a point is close to them or one beyond them shows
 * that nothing changes.
 * @param conditions in rising order of Reynolds number
 * @param outcomes   of the conditions
 * @param index      of the condition in question
 * @param factor     1 or more
 */
export function statesNearby(
  section: PreparedSection,
  conditions: readonly FlowCondition[],
  outcomes: readonly ConditionOutcome[],
  index: number,
  factor: number,
): DragState[] {
  if (!(factor >= 1)) throw new RangeError(`factor is ${factor}; it must be 1 or more.`);
  const own = outcomes[index].states;
  const known = new Set<Regime>(own.map(({ regime }) => regime));
  const found: DragState[] = [...own];
  for (const step of [-1, 1]) {
    const end = conditions[index].reynolds * factor ** step;
    const pastEnd = (i: number) => (conditions[i].reynolds / end) ** step;
    let i = index + step;
    let nearest = 1 / factor;
    for (; i >= 0 && i < conditions.length && pastEnd(i) <= sameEnd; i += step) {
      found.push(...outcomes[i].states);
      nearest = pastEnd(i);
    }
    if (nearest >= 1 / sameEnd) continue;
    const beyond = outcomes[i]?.states ?? [];
    const nothingChanges = beyond.length > 0 && known.size === 1 && beyond.every(({ regime }) => known.has(regime));
    if (!nothingChanges) found.push(...solveCondition(section, { ...conditions[index], reynolds: end }).states);
  }
  return found;
}
