import type { FlowCondition } from "../condition";
import { TRUST_NUMBERS } from "../constants/trustNumbers";
import type { ConditionOutcome } from "../solution";
import type { PreparedSection } from "../solve/preparedSection";
import { crisisPlace, crisisReynolds } from "./crisisSpeed";
import { dragDistribution, judgeDrag } from "./dragDistribution";
import type { JudgedDragBand } from "./judgedDragBand";
import { branchKnots } from "./outcomesAround";
import { studyGround } from "./studyPlace";

const MEASUREMENT_SCATTER = TRUST_NUMBERS.measurementScatter.value;

/**
 * The expected drag and the band of every point on the rising branch of a curve, from the curve's own points alone:
 * nothing more is solved, so that a sketch of a curve is judged as quickly as it is drawn. A crisis between two points is
 * taken half way, so that points should lie close together about it.
 * @param conditions in rising order of Reynolds number, alike otherwise
 * @param outcomes   of the conditions
 * @returns point by point; null where nothing converged
 */
export function judgeCurve(
  section: PreparedSection,
  conditions: readonly FlowCondition[],
  outcomes: readonly ConditionOutcome[],
): (JudgedDragBand | null)[] {
  const solved = outcomes.flatMap((outcome, i) =>
    outcome.rising === null ? [] : [{ reynolds: conditions[i].reynolds, outcome }],
  );
  const knots = branchKnots(solved, "rising");
  const crisis = crisisReynolds(knots);
  return conditions.map((condition, i) => {
    if (outcomes[i].rising === null) return null;
    const { applicability, reason, knowledge, point } = studyGround(section, condition);
    const distribution = dragDistribution(knowledge, point, condition, knots);
    return {
      ...judgeDrag(distribution, knowledge, MEASUREMENT_SCATTER),
      spansCrisis: new Set(distribution.regimes).size > 1,
      crisisReynolds: crisis === null ? null : crisisPlace(crisis, knowledge, point, condition),
      applicability,
      reason,
    };
  });
}
