import { problem, type Result, success } from "../../result";
import type { Contour } from "./contour";
import { gradingMap } from "./gradingMap";
import type { SectionNodes } from "./sectionNodes";

export const fewestPanels = 16;
export const mostPanels = 2000;

/**
 * Nodes of a contour at equal steps of a smooth periodic parameter that crowds them where the contour turns sharply.
 * Node 0 is the nose; on a mirror-symmetric contour node count/2 is the tail and the nodes mirror to rounding.
 * @param panelCount an even number from 16 to 2000
 */
export function gradeNodes(contour: Contour, panelCount: number): Result<SectionNodes> {
  if (!(Number.isInteger(panelCount) && panelCount >= fewestPanels && panelCount <= mostPanels)) {
    const message = `panel count is ${panelCount}; it must be an even whole number from ${fewestPanels} to ${mostPanels}`;
    return problem("panel-count-out-of-range", message, "panelCount");
  }
  if (panelCount % 2 !== 0) {
    const message = `panel count is ${panelCount}; it must be even, for instance ${panelCount + 1}`;
    return problem("panel-count-odd", message, "panelCount");
  }
  const { name, perimeter, area, centroid, mirrorSymmetric } = contour;
  const count = panelCount;
  const column = () => new Float64Array(count);
  const nodes = { x: column(), y: column(), tangentX: column(), tangentY: column(), ds: column(), arc: column() };
  const curvature = column();
  const map = contour.naturalParameter ?? gradingMap(contour);
  const step = (2 * Math.PI) / count;
  for (let i = 0; i < count; i++) {
    const mirrored = mirrorSymmetric && i > count / 2;
    const at = map(step * (mirrored ? count - i : i));
    const arc = i === 0 ? 0 : mirrored ? perimeter - at.arc : at.arc;
    const point = contour.at(arc);
    nodes.x[i] = point.x;
    nodes.y[i] = point.y;
    nodes.tangentX[i] = point.tangentX;
    nodes.tangentY[i] = point.tangentY;
    nodes.arc[i] = arc;
    nodes.ds[i] = at.arcRate * step;
    curvature[i] = point.curvature;
  }
  return success({ name, count, ...nodes, curvature, perimeter, area, centroid, mirrorSymmetric });
}
