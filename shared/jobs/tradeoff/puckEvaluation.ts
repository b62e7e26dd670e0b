import type { DragBand } from "../../engine/trust/dragInterval";
import { problem, type Result, success } from "../../result";
import {
  type DimensionKey,
  dimensionOf,
  dimensionTable,
  type FigureKey,
  figureCatalogue,
  figureKeys,
  type MassTarget,
  type PuckDesign,
  type PuckFigures,
  type PuckSpec,
  puckFigures,
  type RuleSet,
  sizeCoreForMass,
  withDimension,
} from "../puck/public";
import type { DesignSpace, Evaluation, FreeVariable, Goal } from "./designSpace";

/** What a search may use as a goal: a puck figure, the drag index, or the distance from the wanted mass in kg. */
export type PuckGoalKey = FigureKey | "dragIndex" | "massErrorKilograms";

export interface PuckGoal extends Goal {
  readonly key: PuckGoalKey;
}

export interface PuckVariable extends FreeVariable {
  readonly key: DimensionKey;
}

export interface PuckSearch {
  /** The puck whose free dimensions are varied; the rest of it stays. */
  readonly template: PuckDesign;
  readonly variables: readonly PuckVariable[];
  readonly goals: readonly PuckGoal[];
  readonly rules: RuleSet | null;
  /** With it the core is sized for a mass in every candidate; that dimension must not be free as well. */
  readonly massTarget: MassTarget | null;
}

/** Drag over the baseline's, 1 being equal, of a candidate; from orientationIndex with the caller's solved sections. */
export type DragIndexOf = (spec: PuckSpec, figures: PuckFigures) => Result<DragBand>;

export interface PuckCandidate {
  readonly spec: PuckSpec;
  readonly figures: PuckFigures;
  /** Null when no goal asks for it. */
  readonly dragIndex: DragBand | null;
}

/** Violation of a puck that cannot be made at all: far above any that merely misses a range. */
const impossible = 1e6;

/** The space of a search; each free dimension must exist in the template and lie inside the rules' own range of it. */
export function puckSpace(search: PuckSearch): Result<DesignSpace> {
  for (const { key } of search.variables) {
    if (dimensionOf(search.template.spec, key) === null) {
      return problem("tradeoff", `this puck has no ${dimensionTable[key].label} to vary`, key);
    }
  }
  if (search.goals.some(({ key }) => key === "massErrorKilograms") && search.massTarget === null) {
    return problem("tradeoff", "the mass error needs a wanted mass", "massTarget");
  }
  const variables = search.variables.map(({ key, lowest, highest }) => {
    const range = (figureKeys as readonly string[]).includes(key) ? search.rules?.ranges[key as FigureKey] : undefined;
    return { key, lowest: Math.max(lowest, range?.from ?? lowest), highest: Math.min(highest, range?.to ?? highest) };
  });
  return success({ variables, goals: search.goals });
}

/** The puck of one point of the space, its core sized when a mass is wanted. */
export function puckCandidate(
  search: PuckSearch,
  values: readonly number[],
  dragIndexOf: DragIndexOf | null,
): Result<PuckCandidate> {
  const { template, massTarget } = search;
  const spec = search.variables.reduce((changed, { key }, i) => withDimension(changed, key, values[i]), template.spec);
  let sized = spec;
  if (massTarget !== null) {
    const result = sizeCoreForMass(
      spec,
      template.setting,
      massTarget.massKilograms,
      massTarget.freeDimension,
      massTarget.leastCoverMetres,
    );
    if (!result.ok) return result;
    sized = result.value.spec;
  }
  const figures = puckFigures(sized, template.setting);
  if (!figures.ok) return figures;
  if (!search.goals.some(({ key }) => key === "dragIndex")) {
    return success({ spec: sized, figures: figures.value, dragIndex: null });
  }
  if (dragIndexOf === null) return problem("tradeoff", "the drag index needs solved sections", "dragIndex");
  const drag = dragIndexOf(sized, figures.value);
  return drag.ok ? success({ spec: sized, figures: figures.value, dragIndex: drag.value }) : drag;
}

/** One point of the space as the search sees it: goals, and how far outside the rules it lies. Never fails. */
export function evaluatePuck(
  search: PuckSearch,
  values: readonly number[],
  dragIndexOf: DragIndexOf | null,
): Evaluation {
  const candidate = puckCandidate(search, values, dragIndexOf);
  if (!candidate.ok) {
    const goals = search.goals.map(() => 0);
    return { variables: values, goals, violation: impossible, reason: candidate.problem.message };
  }
  const { figures } = candidate.value;
  const goals: number[] = [];
  for (const { key } of search.goals) {
    const value = goalValue(search, candidate.value, key);
    if (value === null) {
      const reason = `${key} is not determined for this puck`;
      return { variables: values, goals: search.goals.map(() => 0), violation: impossible, reason };
    }
    goals.push(value);
  }
  return { variables: values, goals, ...ruleViolation(figures, search.rules) };
}

function goalValue(search: PuckSearch, { figures, dragIndex }: PuckCandidate, key: PuckGoalKey): number | null {
  if (key === "dragIndex") return dragIndex?.expected ?? null;
  if (key === "massErrorKilograms") {
    return search.massTarget === null ? null : Math.abs(figures.massKilograms - search.massTarget.massKilograms);
  }
  return figures[key];
}

/** Sum of the relative overshoots of the rules' ranges; a figure that is not determined counts as one whole overshoot. */
function ruleViolation(figures: PuckFigures, rules: RuleSet | null): Pick<Evaluation, "violation" | "reason"> {
  let violation = 0;
  let reason: string | null = null;
  for (const key of figureKeys) {
    const range = rules?.ranges[key];
    if (range === undefined) continue;
    const value = figures[key];
    const over = value === null ? 1 : overshoot(value, range.from ?? value, range.to ?? value);
    if (over > 0 && reason === null) reason = `${figureCatalogue[key].label} is outside the rules`;
    violation += over;
  }
  return { violation, reason };
}

function overshoot(value: number, from: number, to: number): number {
  const scale = Math.max(Math.abs(from), Math.abs(to), Number.MIN_VALUE);
  return Math.max(0, from - value, value - to) / scale;
}
