import type { FlowCondition } from "../condition";
import { TRUST_NUMBERS } from "../constants/trustNumbers";
import type { ConditionOutcome, SectionState } from "../solution";
import type { PreparedSection } from "../solve/preparedSection";
import { solveCondition } from "../solve/solveCondition";
import type { DragKnots } from "./dragKnots";

/** An outcome at one of the Reynolds numbers around a condition. */
export interface NearOutcome {
  readonly reynolds: number;
  readonly outcome: ConditionOutcome;
}

/** A point of the curve this near to an end of the range, as a ratio of Reynolds numbers, stands for the end. */
const sameEnd = TRUST_NUMBERS.sameEnd.value;
/** A change of regime is placed to this factor of Reynolds number, by at most so many solutions. */
const placedTo = TRUST_NUMBERS.crisisPlacedTo.value;
const MOST_HALVINGS = 3;

/**
 * What a section does at a condition and within a factor of its Reynolds number. Points of the curve are used where
 * there are some; the two ends of the range are solved unless a point is close to them or one beyond them shows that
 * nothing changes, and a change of regime is closed in on.
 * @param conditions in rising order of Reynolds number
 * @param outcomes   of the conditions
 * @param index      of the condition in question
 * @param factor     1 or more
 * @returns rising in Reynolds number, without outcomes that have no state
 */
export function outcomesAround(
  section: PreparedSection,
  conditions: readonly FlowCondition[],
  outcomes: readonly ConditionOutcome[],
  index: number,
  factor: number,
): NearOutcome[] {
  if (!(factor >= 1)) throw new RangeError(`factor is ${factor}; it must be 1 or more.`);
  const here = conditions[index];
  const solved = (reynolds: number): NearOutcome => ({
    reynolds,
    outcome: solveCondition(section, { ...here, reynolds }),
  });
  const found: NearOutcome[] = [{ reynolds: here.reynolds, outcome: outcomes[index] }];
  for (const step of [-1, 1]) {
    const end = here.reynolds * factor ** step;
    const pastEnd = (i: number) => (conditions[i].reynolds / end) ** step;
    let i = index + step;
    let nearest = 1 / factor;
    for (; i >= 0 && i < conditions.length && pastEnd(i) <= sameEnd; i += step) {
      found.push({ reynolds: conditions[i].reynolds, outcome: outcomes[i] });
      nearest = pastEnd(i);
    }
    if (nearest >= 1 / sameEnd) continue;
    const beyond = outcomes[i];
    const known = kinds(found.map(({ outcome }) => outcome));
    const nothingChanges =
      beyond !== undefined &&
      beyond.states.length > 0 &&
      known.size === 1 &&
      kinds([beyond]).size === 1 &&
      known.has([...kinds([beyond])][0]);
    if (!nothingChanges) found.push(solved(end));
  }
  const rising = () => found.filter(({ outcome }) => outcome.states.length > 0).sort((a, b) => a.reynolds - b.reynolds);
  for (let halving = 0; halving < MOST_HALVINGS; halving++) {
    const sorted = rising();
    const wide = sorted.findIndex(
      ({ reynolds, outcome }, i) =>
        i > 0 &&
        reynolds / sorted[i - 1].reynolds > placedTo &&
        kinds([outcome, sorted[i - 1].outcome]).size >
          Math.max(kinds([outcome]).size, kinds([sorted[i - 1].outcome]).size),
    );
    if (wide < 0) break;
    found.push(solved(Math.sqrt(sorted[wide - 1].reynolds * sorted[wide].reynolds)));
  }
  return rising();
}

function kinds(outcomes: readonly ConditionOutcome[]): Set<SectionState["regime"]> {
  return new Set(outcomes.flatMap(({ states }) => states.map(({ regime }) => regime)));
}

/** The drag along one branch of the outcomes around a condition. */
export function branchKnots(around: readonly NearOutcome[], branch: "rising" | "falling"): DragKnots {
  const states = around.map(({ outcome }) => outcome.states[outcome[branch]!]);
  return {
    logReynolds: Float64Array.from(around, ({ reynolds }) => Math.log(reynolds)),
    logDrag: Float64Array.from(states, ({ dragCoefficient }) => Math.log(Math.max(dragCoefficient, Number.MIN_VALUE))),
    regimes: states.map(({ regime }) => regime),
  };
}
