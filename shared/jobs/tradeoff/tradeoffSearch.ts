import { problem, type Result, success } from "../../result";
import {
  type CasePuck,
  type ConditionDrags,
  conditionDrags,
  type DimensionKey,
  dimensionOf,
  dimensionTable,
  figureKeys,
  meanIndex,
  type PuckCase,
  type PuckFigures,
  type PuckSpec,
  preparePlan,
  solvePuckFlows,
} from "../puck/public";
import { checkSpace, type DesignSpace, type Evaluation } from "./designSpace";
import {
  type DragIndexOf,
  evaluatePuck,
  type PuckCandidate,
  type PuckSearch,
  type PuckVariable,
  puckCandidate,
  puckSpace,
} from "./puckEvaluation";

/** A trade-off that can be evaluated anywhere: each thread makes its own from the case. */
export interface TradeoffSearch {
  readonly search: PuckSearch;
  readonly space: DesignSpace;
  readonly template: CasePuck;
  readonly baseline: CasePuck;
  readonly baselineDrags: ConditionDrags;
  readonly dragsOf: (spec: PuckSpec, figures: PuckFigures) => Result<ConditionDrags>;
  readonly evaluate: (values: readonly number[]) => Evaluation;
  readonly candidate: (values: readonly number[]) => Result<PuckCandidate>;
}

/** What is known of a trade-off before anything is solved. */
export type TradeoffPlan = Pick<TradeoffSearch, "search" | "space" | "template">;

/**
 * The search of a case's trade-off: bounds from the file cut to the rules' own, the core sized for the wanted mass, the
 * drag index from solved sections against the first baseline, averaged over turbulences and index speeds.
 */
export function tradeoffSearch(theCase: PuckCase): Result<TradeoffSearch> {
  const planned = plannedSearch(theCase);
  if (!planned.ok) return planned;
  const { search, space, template } = planned.value;
  const { stream, play } = theCase;
  const plan = preparePlan(stream.panelCount);
  if (!plan.ok) return plan;
  const dragsFor = (puck: Pick<CasePuck, "spec" | "figures" | "sandGrainRoughness">) => {
    const flows = solvePuckFlows(puck, stream, plan.value, { flatGap: play.flatGap, sweptGaps: [] });
    return flows.ok ? conditionDrags(puck, flows.value, theCase) : flows;
  };
  const [baseline] = theCase.pucks;
  const baselineDrags = dragsFor(baseline);
  if (!baselineDrags.ok) return baselineDrags;
  const dragsOf = (spec: PuckSpec, figures: PuckFigures) =>
    dragsFor({ spec, figures, sandGrainRoughness: template.sandGrainRoughness });
  const dragIndexOf: DragIndexOf = (spec, figures) => {
    const drags = dragsOf(spec, figures);
    if (!drags.ok) return drags;
    const mean = meanIndex(drags.value, baselineDrags.value, theCase);
    return mean.ok ? success(mean.value.index) : mean;
  };
  return success({
    search,
    space,
    template,
    baseline,
    baselineDrags: baselineDrags.value,
    dragsOf,
    evaluate: (values) => evaluatePuck(search, values, dragIndexOf),
    candidate: (values) => puckCandidate(search, values, dragIndexOf),
  });
}

/** The space of a case's trade-off, without solving anything; every fault names its key. */
export function plannedSearch(theCase: PuckCase): Result<TradeoffPlan> {
  const { tradeoff, rules, massTarget, setting, pucks } = theCase;
  if (tradeoff === null) return problem("tradeoff", "puck.tradeoff is missing; the case must describe a trade-off");
  const template = pucks.find(({ spec }) => spec.name === tradeoff.template) ?? pucks[0];
  const variables: PuckVariable[] = [];
  for (const [i, variable] of tradeoff.variables.entries()) {
    const bounds = variableBounds(theCase, template, variable, `puck.tradeoff.variables[${i}]`);
    if (!bounds.ok) return bounds;
    variables.push(bounds.value);
  }
  const search: PuckSearch = {
    template: { spec: template.spec, setting },
    variables,
    goals: tradeoff.goals.map(({ figure, sense }) => ({ key: figure, sense })),
    rules,
    massTarget,
  };
  const space = puckSpace(search);
  if (!space.ok) return problem("tradeoff", `puck.tradeoff: ${space.problem.message}`);
  const checked = checkSpace(space.value);
  if (!checked.ok) return problem("tradeoff", `puck.tradeoff.variables: ${checked.problem.message}`);
  return success({ search, space: space.value, template });
}

/** The dimension of the core that the wanted mass sizes, which must not be free as well. */
const sizedDimensions: Readonly<Record<string, readonly DimensionKey[]>> = {
  diameter: ["coreDiameterMetres", "coreOuterDiameterMetres"],
  thickness: ["coreThicknessMetres"],
  innerDiameter: ["coreInnerDiameterMetres"],
  coatThickness: ["coatThicknessMetres"],
};

function variableBounds(
  { rules, massTarget }: PuckCase,
  { spec }: CasePuck,
  { dimension, from, to }: { readonly dimension: DimensionKey; readonly from?: number; readonly to?: number },
  field: string,
): Result<PuckVariable> {
  const refuse = (message: string) => problem("tradeoff", `${field}: ${message}`, field);
  if (dimensionOf(spec, dimension) === null) {
    return refuse(`"${spec.name}" has no ${dimensionTable[dimension].label} to vary`);
  }
  if (massTarget !== null && sizedDimensions[massTarget.freeDimension].includes(dimension)) {
    return refuse(`the ${dimensionTable[dimension].label} is sized for the wanted mass; free another dimension`);
  }
  const figure = figureKeys.find((key) => key === dimension);
  const range = figure === undefined ? undefined : rules?.ranges[figure];
  const lowest = from ?? range?.from;
  const highest = to ?? range?.to;
  if (lowest === undefined || highest === undefined) {
    return refuse(
      `it needs from and to, as the rules do not limit the ${dimensionTable[dimension].label} on both sides`,
    );
  }
  return success({ key: dimension, lowest, highest });
}
