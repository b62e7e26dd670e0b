import type { FlowCondition } from "../condition";
import type { ConditionOutcome } from "../solution";
import type { PreparedSection } from "../solve/preparedSection";
import { type JudgedApplicability, judgeApplicability } from "./applicability";
import type { CrisisKind } from "./bandTable";
import { CHECKED_BANDS } from "./checkedBands";
import { CHECKED_KNOWLEDGE, UNCHECKED_KNOWLEDGE } from "./checkedLevel";
import { crisisKind } from "./crisisKind";
import type { ErrorKnowledge } from "./errorKnowledge";
import { type SectionPoint, sectionPoint } from "./errorPoint";
import { type NearOutcome, outcomesAround } from "./outcomesAround";
import { describeSection } from "./sectionDescription";
import { standardShifts } from "./shiftNodes";

/** What the error model needs to know of a section in a stream. */
export interface StudyGround extends Pick<JudgedApplicability, "applicability" | "reason"> {
  /** What is known of the errors there: those of published values, or their spread alone. */
  readonly knowledge: ErrorKnowledge;
  readonly kind: CrisisKind;
  readonly point: SectionPoint;
}

/** All that the error model needs to know of one outcome of a drag curve. */
export interface StudyPlace extends StudyGround {
  /** Outcomes as far around the condition as a crisis may be off. */
  readonly around: readonly NearOutcome[];
}

export function studyGround(section: PreparedSection, condition: FlowCondition): StudyGround {
  const nearFloor = section.flow.wakeSuctionShare < 1 || section.floor !== null;
  const description = {
    ...describeSection(section.nodes, section.incidence, nearFloor),
    layerMethod: section.layerMethod.name,
  };
  const { applicability, reason } = judgeApplicability(description, condition, CHECKED_BANDS);
  return {
    applicability,
    reason,
    knowledge: applicability === "outside: do not rely on it" ? UNCHECKED_KNOWLEDGE : CHECKED_KNOWLEDGE,
    kind: crisisKind(description.shape, condition.turbulenceIntensity),
    point: sectionPoint(description, section.nodes, section.referenceWidth),
  };
}

/**
 * Solves a few more conditions near the ends of the curve and about a drag crisis.
 * @param conditions in rising order of Reynolds number
 * @param outcomes   of the conditions
 * @param index      of the outcome in question
 */
export function studyPlace(
  section: PreparedSection,
  conditions: readonly FlowCondition[],
  outcomes: readonly ConditionOutcome[],
  index: number,
): StudyPlace {
  const ground = studyGround(section, conditions[index]);
  const [{ level }] = ground.knowledge;
  const { mean, deviation } = level.parameters.crisisShift[ground.kind];
  const furthest = Math.abs(mean) + deviation * standardShifts[standardShifts.length - 1];
  return { ...ground, around: outcomesAround(section, conditions, outcomes, index, Math.exp(furthest)) };
}
