import { type Result, success } from "../../result";
import type { FlowCondition } from "../condition";
import type { Contour } from "../geometry/contour";
import { gradeNodes, mostPanels } from "../geometry/gradedNodes";
import { panelCountForSection } from "../geometry/panelCountForSection";
import { referenceWidth } from "../geometry/referenceWidth";
import type { PreparedSection } from "../solve/preparedSection";
import { prepareSection } from "../solve/prepareSection";
import { solveCondition } from "../solve/solveCondition";

/** A section ready for any number of conditions. */
export interface PreparedShape {
  readonly section: PreparedSection;
  /** m, across the stream. */
  readonly referenceWidth: number;
  readonly panelCount: number;
}

/** How often the convergence rule doubles the panels at most. */
const mostDoublings = 2;

/** Relative change of the drag coefficient under which doubling the panels has settled it. */
const settledChange = 5e-3;

/**
 * A contour with a given number of panels.
 * @param incidence rad
 * @param floorGap to a floor below, m; null without a floor
 */
export function prepareShape(
  contour: Contour,
  incidence: number,
  panelCount: number,
  floorGap: number | null = null,
): Result<PreparedShape> {
  const nodes = gradeNodes(contour, panelCount);
  if (!nodes.ok) return nodes;
  const gapRatio = floorGap === null ? undefined : floorGap / referenceWidth(nodes.value, incidence);
  const section = prepareSection(nodes.value, incidence, undefined, gapRatio);
  if (!section.ok) return section;
  return success({ section: section.value, referenceWidth: section.value.referenceWidth, panelCount });
}

/**
 * A contour with as many panels as it needs: from the count that suits its bends, doubled until that changes the drag
 * coefficient of one condition by less than 0.5 %, at most twice. Where doubling made no difference the smaller count is
 * returned.
 * @param incidence rad
 * @param conditionOn the condition to judge by, for a reference width in m
 * @param floorGap to a floor below, m; null without a floor
 */
export function prepareSettledShape(
  contour: Contour,
  incidence: number,
  conditionOn: (width: number) => FlowCondition,
  floorGap: number | null = null,
): Result<PreparedShape> {
  let count = panelCountForSection(contour);
  let coarse = prepareShape(contour, incidence, count, floorGap);
  if (!coarse.ok) return coarse;
  let coarseDrag = risingDrag(coarse.value, conditionOn);
  for (let doubling = 0; doubling < mostDoublings; doubling++) {
    count = Math.min(2 * count, mostPanels);
    const fine = prepareShape(contour, incidence, count, floorGap);
    if (!fine.ok) return coarse;
    const fineDrag = risingDrag(fine.value, conditionOn);
    const isSettled =
      coarseDrag !== null && fineDrag !== null && Math.abs(fineDrag - coarseDrag) <= settledChange * Math.abs(fineDrag);
    if (isSettled) return coarse;
    coarse = fine;
    coarseDrag = fineDrag;
  }
  return coarse;
}

function risingDrag(shape: PreparedShape, conditionOn: (width: number) => FlowCondition): number | null {
  const outcome = solveCondition(shape.section, conditionOn(shape.referenceWidth));
  return outcome.rising === null ? null : outcome.states[outcome.rising].dragCoefficient;
}
