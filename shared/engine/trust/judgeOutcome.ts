import type { FlowCondition } from "../condition";
import { TRUST_NUMBERS } from "../constants/trustNumbers";
import type { ConditionOutcome, SectionState } from "../solution";
import type { PreparedSection } from "../solve/preparedSection";
import { crisisPlace, crisisReynolds } from "./crisisSpeed";
import { dragDistribution, type JudgedDrag, judgeDrag } from "./dragDistribution";
import type { DragKnots } from "./dragKnots";
import type { JudgedDragBand } from "./judgedDragBand";
import type { DragState } from "./nearbyStates";
import { branchKnots, type NearOutcome } from "./outcomesAround";
import { studyPlace } from "./studyPlace";

/** What is known about the trust in one outcome of a drag curve. */
export interface JudgedOutcome {
  /** Of the outcome's states, in their order. */
  readonly bands: readonly JudgedDragBand[];
  /** The states that the bands were drawn about: those of the outcome, and those about a near drag crisis. */
  readonly nearby: readonly DragState[];
  /** The outcomes that these states are of, rising in Reynolds number. */
  readonly around: readonly NearOutcome[];
}

/** Scatter of a good measurement in ln Cd, for the band of one. */
const MEASUREMENT_SCATTER = TRUST_NUMBERS.measurementScatter.value;

/**
 * The expected drag and the bands of one outcome of a drag curve. Solves a few more conditions near the ends of the
 * curve and about a drag crisis.
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
  const { states, rising, falling } = outcomes[index];
  if (states.length === 0) return { bands: [], nearby: [], around: [] };
  const condition = conditions[index];
  const place = studyPlace(section, conditions, outcomes, index);
  const { applicability, reason, knowledge, point, around } = place;
  const bands = states.map((state, i): JudgedDragBand => {
    const knots =
      i === rising
        ? branchKnots(around, "rising")
        : i === falling
          ? branchKnots(around, "falling")
          : alone(condition, state);
    const distribution = dragDistribution(knowledge, point, condition, knots);
    const crisis = crisisReynolds(knots);
    return {
      ...withSeen(judgeDrag(distribution, knowledge, MEASUREMENT_SCATTER), state),
      spansCrisis: new Set(distribution.regimes).size > 1,
      crisisReynolds: crisis === null ? null : crisisPlace(crisis, knowledge, point, condition),
      applicability,
      reason,
    };
  });
  return { bands, nearby: around.flatMap(({ outcome }) => outcome.states), around };
}

/** The bands of a state that is not settled, widened by what it was seen to do when hardly anything changed. */
function withSeen(judged: JudgedDrag, { settled, dragCoefficient, dragCoefficientSeen: [low, high] }: SectionState) {
  if (settled) return judged;
  const [down, up] = [low / dragCoefficient, high / dragCoefficient];
  return {
    ...judged,
    low: judged.low * down,
    high: judged.high * up,
    measurementLow: judged.measurementLow * down,
    measurementHigh: judged.measurementHigh * up,
  };
}

/** A state on neither branch stands for itself. */
function alone({ reynolds }: FlowCondition, { dragCoefficient, regime }: SectionState): DragKnots {
  return {
    logReynolds: Float64Array.of(Math.log(reynolds)),
    logDrag: Float64Array.of(Math.log(Math.max(dragCoefficient, Number.MIN_VALUE))),
    regimes: [regime],
  };
}
