import type { FlowCondition } from "../condition";
import type { ConditionOutcome, SectionState } from "../solution";
import type { PreparedSection } from "./preparedSection";
import { solveCondition } from "./solveCondition";

/**
 * Solves a section over conditions in rising order of Reynolds number and follows what a slowly rising and a slowly
 * falling speed would sit on: a state is kept as long as one of its kind exists, else the flow moves to the state whose
 * separation is nearest.
 * @param conditions in rising order of Reynolds number, alike otherwise
 * @throws RangeError when the Reynolds numbers do not rise
 */
export function traceDragCurve(section: PreparedSection, conditions: readonly FlowCondition[]): ConditionOutcome[] {
  for (let i = 1; i < conditions.length; i++) {
    const before = conditions[i - 1].reynolds;
    const after = conditions[i].reynolds;
    if (after < before) throw new RangeError(`Reynolds numbers must rise; ${after} follows ${before}.`);
  }
  const outcomes = conditions.map((condition) => solveCondition(section, condition));
  const rising = follow(outcomes, 0);
  const falling = follow([...outcomes].reverse(), -1).reverse();
  return outcomes.map((outcome, i) => ({ ...outcome, rising: rising[i], falling: falling[i] }));
}

/** Index of the state that is sat on, outcome by outcome; `first` picks the first state, 0 the earliest or -1 the latest. */
function follow(outcomes: readonly ConditionOutcome[], first: 0 | -1): (number | null)[] {
  let current: SectionState | null = null;
  return outcomes.map(({ states }) => {
    if (states.length === 0) return null;
    const index: number = current === null ? (first === 0 ? 0 : states.length - 1) : nearestState(states, current);
    current = states[index];
    return index;
  });
}

function nearestState(states: readonly SectionState[], current: SectionState): number {
  const distance = (state: SectionState) =>
    Math.abs(state.upper.separationArc - current.upper.separationArc) +
    Math.abs(state.lower.separationArc - current.lower.separationArc);
  const sameKind = states
    .map((state, index) => ({ state, index }))
    .filter(({ state }) => state.upper.state === current.upper.state && state.lower.state === current.lower.state);
  const candidates = sameKind.length > 0 ? sameKind : states.map((state, index) => ({ state, index }));
  return candidates.reduce((best, next) => (distance(next.state) < distance(best.state) ? next : best)).index;
}
