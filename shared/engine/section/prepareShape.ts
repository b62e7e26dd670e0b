import { type Result, success } from "../../result";
import { CALIBRATED } from "../constants/calibrated";
import type { Contour } from "../geometry/contour";
import { gradeNodes, mostPanels } from "../geometry/gradedNodes";
import { panelCountForSection } from "../geometry/panelCountForSection";
import { referenceWidth } from "../geometry/referenceWidth";
import { buildContour } from "../geometry/sectionFamilies";
import { layerMethod } from "../layer/layerMethod";
import type { LayerMethodName } from "../layer/layerMethodName";
import type { PreparedSection } from "../solve/preparedSection";
import { prepareSection } from "../solve/prepareSection";
import { solveCondition } from "../solve/solveCondition";
import { floorGapRatio } from "./floorGapRatio";
import type { PlacedSection } from "./placedSection";
import { flowCondition, type Stream } from "./stream";

/** A section with its flow prepared: good for any number of streams at its incidence. */
export interface PreparedShape {
  /** The prepared flow, for solveCondition. */
  readonly section: PreparedSection;
  /** What its contour is, for results. */
  readonly name: string;
  /** Nose up, rad. */
  readonly incidence: number;
  /** Gap to a floor below, m; null without a floor. */
  readonly floorGap: number | null;
  /** D, across the stream, m. */
  readonly referenceWidth: number;
  /** Even. */
  readonly panelCount: number;
  /** How its boundary layers are worked out. */
  readonly layerMethod: LayerMethodName;
}

/** How often the convergence rule doubles the panels at most. */
const mostDoublings = 2;

/** Relative change of the drag coefficient under which doubling the panels has settled it. */
const settledChange = 5e-3;

/**
 * Builds, panels and prepares a section. A panel count of "auto" starts from the count that suits its bends and is
 * doubled until that changes the drag coefficient in one stream by less than 0.5 %, at most twice; where doubling made
 * no difference the smaller count is kept.
 * @param settledIn the stream to judge an automatic panel count by; without it the first count is taken
 * @returns a problem whose field is the dimension, "incidence" or "floorGap" that caused it
 */
export function prepareShape(placed: PlacedSection, settledIn?: Stream): Result<PreparedShape> {
  const { section, panelCount = "auto" } = placed;
  const contour = "family" in section ? buildContour(section) : success(section);
  if (!contour.ok) return contour;
  if (panelCount !== "auto") return panelled(placed, contour.value, panelCount);
  const first = panelCountForSection(contour.value);
  return settledIn === undefined
    ? panelled(placed, contour.value, first)
    : settled(placed, contour.value, first, settledIn);
}

function panelled(placed: PlacedSection, contour: Contour, panelCount: number): Result<PreparedShape> {
  const { incidence = 0, floorGap = null, splitterPlate = false, layerMethod: method = "integral" } = placed;
  const nodes = gradeNodes(contour, panelCount);
  if (!nodes.ok) return nodes;
  const width = referenceWidth(nodes.value, incidence);
  const gapRatio = floorGapRatio(floorGap, width);
  if (!gapRatio.ok) return gapRatio;
  const section = prepareSection(
    nodes.value,
    incidence,
    CALIBRATED,
    gapRatio.value,
    splitterPlate,
    layerMethod(method),
  );
  if (!section.ok) return section;
  return success({
    section: section.value,
    name: nodes.value.name,
    incidence,
    floorGap,
    referenceWidth: section.value.referenceWidth,
    panelCount: nodes.value.count,
    layerMethod: method,
  });
}

function settled(placed: PlacedSection, contour: Contour, first: number, stream: Stream): Result<PreparedShape> {
  let count = first;
  let coarse = panelled(placed, contour, count);
  if (!coarse.ok) return coarse;
  let coarseDrag = risingDrag(coarse.value, stream);
  for (let doubling = 0; doubling < mostDoublings; doubling++) {
    count = Math.min(2 * count, mostPanels);
    const fine = panelled(placed, contour, count);
    if (!fine.ok) return coarse;
    const fineDrag = risingDrag(fine.value, stream);
    const isSettled =
      coarseDrag !== null && fineDrag !== null && Math.abs(fineDrag - coarseDrag) <= settledChange * Math.abs(fineDrag);
    if (isSettled) return coarse;
    coarse = fine;
    coarseDrag = fineDrag;
  }
  return coarse;
}

function risingDrag({ section, referenceWidth }: PreparedShape, stream: Stream): number | null {
  const outcome = solveCondition(section, flowCondition(stream, referenceWidth));
  return outcome.rising === null ? null : outcome.states[outcome.rising].dragCoefficient;
}
