import type { FlowCondition } from "../condition";
import type { ConditionOutcome } from "../solution";
import type { PreparedSection } from "../solve/preparedSection";
import { crisisFactor, dragBand, type JudgedDragBand } from "./dragBand";
import { statesNearby } from "./nearbyStates";
import { describeSection } from "./sectionDescription";

/**
 * The bands of all states of a drag curve, one list per outcome in the order of its states. Solves a few more conditions
 * near the ends of the curve and about a drag crisis.
 * @param conditions in rising order of Reynolds number, alike otherwise
 * @param outcomes   of the conditions
 */
export function curveBands(
  section: PreparedSection,
  conditions: readonly FlowCondition[],
  outcomes: readonly ConditionOutcome[],
): JudgedDragBand[][] {
  if (outcomes.length !== conditions.length) {
    throw new RangeError(
      `there are ${outcomes.length} outcomes and ${conditions.length} conditions; both need the same number.`,
    );
  }
  const description = describeSection(section.nodes, section.incidence, section.floor !== null);
  return outcomes.map(({ states }, i) => {
    if (states.length === 0) return [];
    const nearby = statesNearby(section, conditions, outcomes, i, crisisFactor(description, conditions[i]));
    return states.map((state) => dragBand(description, state, conditions[i], nearby));
  });
}
