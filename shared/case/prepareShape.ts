import type { Contour } from "../geometry/contour";
import { gradeNodes } from "../geometry/gradedNodes";
import { referenceWidth } from "../geometry/referenceWidth";
import { problem, type Result, success } from "../result";
import type { FlowCondition } from "../solve/condition";
import { type PreparedSection, prepareSection } from "../solve/prepareSection";
import { solveCondition } from "../solve/solveCondition";

/** A section ready for any number of conditions. */
export interface PreparedShape {
  readonly section: PreparedSection;
  /** m, across the stream. */
  readonly referenceWidth: number;
  readonly panelCount: number;
}

/** Panel counts that the convergence rule tries, each twice the one before. */
export const automaticPanelCounts = [100, 200, 400, 800] as const;

/** Relative change of the drag coefficient under which doubling the panels has settled it. */
const settledChange = 5e-3;

/**
 * A contour with a given number of panels.
 * @param incidence rad
 */
export function prepareShape(contour: Contour, incidence: number, panelCount: number): Result<PreparedShape> {
  const nodes = gradeNodes(contour, panelCount);
  if (!nodes.ok) return nodes;
  const section = prepareSection(nodes.value, incidence);
  if (!section.ok) return section;
  return success({ section: section.value, referenceWidth: referenceWidth(nodes.value, incidence), panelCount });
}

/**
 * A contour with as many panels as it needs: doubled until the drag coefficient of one condition changes by less than
 * 0.5 %, or until the largest count is reached.
 * @param incidence rad
 * @param conditionOn the condition to judge by, for a reference width in m
 */
export function prepareSettledShape(
  contour: Contour,
  incidence: number,
  conditionOn: (width: number) => FlowCondition,
): Result<PreparedShape> {
  let coarser: { readonly shape: PreparedShape; readonly drag: number | null } | null = null;
  let refusal: Result<PreparedShape> = problem("panels", `${contour.name} could not be prepared`);
  for (const count of automaticPanelCounts) {
    const shape = prepareShape(contour, incidence, count);
    if (!shape.ok) {
      refusal = shape;
      continue;
    }
    const drag = risingDrag(shape.value, conditionOn(shape.value.referenceWidth));
    const before: number | null = coarser === null ? null : coarser.drag;
    if (drag !== null && before !== null && Math.abs(drag - before) <= settledChange * Math.abs(drag)) return shape;
    coarser = { shape: shape.value, drag };
  }
  return coarser === null ? refusal : success(coarser.shape);
}

function risingDrag(shape: PreparedShape, condition: FlowCondition): number | null {
  const outcome = solveCondition(shape.section, condition);
  return outcome.rising === null ? null : outcome.states[outcome.rising].dragCoefficient;
}
