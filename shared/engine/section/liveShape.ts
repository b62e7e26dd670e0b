import { type Result, success } from "../../result";
import { gradeNodes } from "../geometry/gradedNodes";
import { referenceWidth } from "../geometry/referenceWidth";
import { buildContour } from "../geometry/sectionFamilies";
import type { SectionNodes } from "../geometry/sectionNodes";
import type { PreparedSection } from "../solve/preparedSection";
import { prepareSection } from "../solve/prepareSection";
import { liveGapRatio } from "./liveFloor";
import type { LiveRequest } from "./liveRequest";

/** A section with its flow prepared; good for every stream that it meets at this incidence. */
export interface LiveShape {
  readonly nodes: SectionNodes;
  readonly prepared: PreparedSection;
  /** D, m. */
  readonly width: number;
}

/** Builds, panels and prepares the section of a request; the problem's field is the dimension that caused it. */
export function prepareLive({ section, panelCount, incidence, floorGap }: LiveRequest): Result<LiveShape> {
  const contour = buildContour(section);
  if (!contour.ok) return contour;
  const nodes = gradeNodes(contour.value, panelCount);
  if (!nodes.ok) return nodes;
  const width = referenceWidth(nodes.value, incidence);
  const gapRatio = liveGapRatio(floorGap, width);
  if (!gapRatio.ok) return gapRatio;
  const prepared = prepareSection(nodes.value, incidence, undefined, gapRatio.value);
  if (!prepared.ok) return prepared;
  return success({
    nodes: nodes.value,
    prepared: prepared.value,
    width,
  });
}
