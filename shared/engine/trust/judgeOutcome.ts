import type { FlowCondition } from "../condition";
import type { ConditionOutcome } from "../solution";
import type { PreparedSection } from "../solve/preparedSection";
import { crisisFactor, dragBand } from "./dragBand";
import type { JudgedDragBand } from "./judgedDragBand";
import { type DragState, statesNearby } from "./nearbyStates";
import { describeSection } from "./sectionDescription";

/** What is known about the trust in one outcome of a drag curve. */
export interface JudgedOutcome {
  /** Of the outcome's states, in their order. */
  readonly bands: readonly JudgedDragBand[];
  /** The states that the bands were drawn about: those of the outcome, and those about a near drag crisis. */
  readonly nearby: readonly DragState[];
}

/**
 * The bands of one outcome of a drag curve. Solves a few more conditions near the ends of the curve and about a drag
 * crisis.
 * @param conditions in rising order of Reynolds number, alike otherwise
 * @param outcomes   of the conditions
 * @param index      of the outcome in question
 */
export function judgeOutcome(
  section: PreparedSection,
  conditions: readonly FlowCondition[],
  outcomes: readonly ConditionOutcome[],
  index: number,
): JudgedOutcome {
  if (outcomes.length !== conditions.length) {
    throw new RangeError(
      `there are ${outcomes.length} outcomes and ${conditions.length} conditions; both need the same number.`,
    );
  }
  const { states } = outcomes[index];
  if (states.length === 0) return { bands: [], nearby: [] };
  const condition = conditions[index];
  const nearFloor = section.flow.wakeSuctionShare < 1 || section.floor !== null;
  const description = {
    ...describeSection(section.nodes, section.incidence, nearFloor),
    layerMethod: section.layerMethod.name,
  };
  const nearby = statesNearby(section, conditions, outcomes, index, crisisFactor(description, condition));
  return { bands: states.map((state) => dragBand(description, state, condition, nearby)), nearby };
}
