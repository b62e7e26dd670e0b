import type { Problem, Result } from "../../result";
import { puckCautions } from "./body/playCautions";
import { dimensionKeys, dimensionOf } from "./body/puckDimension";
import { comparePucks } from "./drag/puckComparison";
import { puckDragRows } from "./drag/puckDragRows";
import { type PuckFlow, preparePlan, solvePuckFlows } from "./drag/puckFlow";
import { type ConditionDrags, conditionDrags } from "./drag/puckIndex";
import { type MotionResult, puckMotions } from "./motion/puckMotion";
import type { CasePuck, PuckCase } from "./puckCase";
import type { PuckComparison, PuckResult } from "./puckResult";
import { judgePuck, type MakingTolerances } from "./rules/judgePuck";

/** One puck done. */
export interface PuckStep {
  readonly result: PuckResult;
}

interface Baseline {
  readonly name: string;
  readonly drags: ConditionDrags;
}

/**
 * Judges the pucks of a case, baselines first, one per `next()`; returns all results.
 * @param onFlows called with the solved flows of each puck
 */
export function* puckSteps(
  theCase: PuckCase,
  onFlows: (name: string, flows: readonly PuckFlow[]) => void = () => {},
): Generator<PuckStep, readonly PuckResult[]> {
  const results: PuckResult[] = [];
  const baselines: Baseline[] = [];
  const plan = preparePlan(theCase.stream.panelCount);
  for (const puck of theCase.pucks) {
    const result = plan.ok
      ? puckResult(
          puck,
          theCase,
          () => solvePuckFlows(puck, theCase.stream, plan.value, theCase.play, true),
          baselines,
          onFlows,
        )
      : puckResult(puck, theCase, () => plan, baselines, onFlows);
    results.push(result);
    yield { result };
  }
  return results;
}

/** The tolerances of the dimensions that a puck has; those of others are another puck's. */
export function ownTolerances({ spec }: Pick<CasePuck, "spec">, { tolerances }: PuckCase): MakingTolerances {
  return Object.fromEntries(
    dimensionKeys
      .filter((key) => tolerances[key] !== undefined && dimensionOf(spec, key) !== null)
      .map((key) => [key, tolerances[key]]),
  );
}

function puckResult(
  puck: CasePuck,
  theCase: PuckCase,
  solve: () => ReturnType<typeof solvePuckFlows>,
  baselines: Baseline[],
  onFlows: (name: string, flows: readonly PuckFlow[]) => void,
): PuckResult {
  const problems: Problem[] = [];
  const keep = <T>(result: Result<T>, otherwise: T): T => {
    if (result.ok) return result.value;
    problems.push(result.problem);
    return otherwise;
  };
  const { spec, figures } = puck;
  const design = { spec, setting: theCase.setting };
  const rules =
    theCase.rules === null
      ? null
      : keep(judgePuck(design, theCase.rules, ownTolerances(puck, theCase), theCase.sampling), null);
  const flows = keep(solve(), []);
  if (flows.length > 0) onFlows(spec.name, flows);
  const drag = keep(puckDragRows(puck, flows, theCase), { rows: [], notes: [] });
  const drags = flows.length === 0 ? null : keep<ConditionDrags | null>(conditionDrags(puck, flows, theCase), null);
  const comparisons: PuckComparison[] = [];
  if (drags !== null) {
    for (const baseline of baselines) {
      const comparison = keep<PuckComparison | null>(comparePucks(spec.name, drags, baseline, theCase), null);
      if (comparison !== null) comparisons.push(comparison);
    }
    if (puck.role === "baseline") baselines.push({ name: spec.name, drags });
  }
  const motions: MotionResult[] = [];
  for (const flow of flows) motions.push(...keep<MotionResult[]>(puckMotions(puck, flow, theCase), []));
  return {
    name: spec.name,
    role: puck.role,
    note: puck.note,
    puck: spec,
    sandGrainRoughnessMetres: puck.sandGrainRoughness,
    figures,
    rules,
    drag: drag.rows,
    comparisons,
    motions,
    notes: theCase.unreadRules === null ? drag.notes : [...drag.notes, unreadNote(theCase.unreadRules)],
    cautions: puckCautions(spec, theCase.setting.userMaterials ?? []),
    problem: problems.length === 0 ? null : [...new Set(problems.map(({ message }) => message))].join("; "),
  };
}

function unreadNote(path: string): string {
  return `The rules file ${path} was not at hand here, so no rules were judged; give the rule set itself in the case.`;
}
