import { problem, type Result, success } from "../../result";
import type { Contour } from "../geometry/contour";
import { gradeNodes } from "../geometry/gradedNodes";

/** Cells into which a panel is divided where its own field or that of a neighbour is summed. */
export const cellsPerPanel = 8;

/** Most panels from the front point to the rear one, so that their cells stay within the node limit of a section. */
export const mostAxialPanels = 124;

/**
 * Panels of a body of revolution from its front point to its rear one, the stream along x. Every array has shape [count],
 * those of cells [count * cellsPerPanel].
 */
export interface AxialNodes {
  readonly count: number;
  /** Middle of each panel: along the axis and away from it, m. */
  readonly x: Float64Array;
  readonly r: Float64Array;
  /** Unit tangent downstream. */
  readonly tangentX: Float64Array;
  readonly tangentR: Float64Array;
  /** Length of each panel, m. */
  readonly ds: Float64Array;
  /** Arc length of each middle from the front point, m; and of the whole meridian. */
  readonly arc: Float64Array;
  readonly length: number;
  /** Curvature of the meridian, 1/m, positive where convex. */
  readonly curvature: Float64Array;
  /** Middles and lengths of the cells, m. */
  readonly cellX: Float64Array;
  readonly cellR: Float64Array;
  readonly cellDs: Float64Array;
}

/**
 * Panels along the lower half of a contour that is its own mirror image about the x axis, crowded where it turns sharply.
 * @param count an even whole number from 16 to {@link mostAxialPanels}
 */
export function axialNodes(contour: Contour, count: number): Result<AxialNodes> {
  if (!contour.mirrorSymmetric) {
    return problem("not-symmetric", `${contour.name} is not its own mirror image about the axis; it must be`);
  }
  if (!(Number.isInteger(count) && count >= 16 && count <= mostAxialPanels)) {
    return problem(
      "panel-count-out-of-range",
      `panel count is ${count}; it must be a whole number from 16 to ${mostAxialPanels}`,
      "panelCount",
    );
  }
  const graded = gradeNodes(contour, 2 * count * cellsPerPanel);
  if (!graded.ok) return graded;
  const fine = graded.value;
  const column = (n = count) => new Float64Array(n);
  const nodes = { x: column(), r: column(), tangentX: column(), tangentR: column(), ds: column(), arc: column() };
  const curvature = column();
  const cells = count * cellsPerPanel;
  const [cellX, cellR, cellDs] = [column(cells), column(cells), column(cells)];
  const length = contour.perimeter / 2;
  for (let i = 0; i < cells; i++) {
    // Counter-clockwise from the nose is the lower side: there the distance from the axis is -y.
    const [dx, dr] = [fine.x[i + 1] - fine.x[i], fine.y[i] - fine.y[i + 1]];
    const chord = Math.hypot(dx, dr);
    // From the middle of the chord out to the arc: without it the sums are wrong by as much as a cell is long.
    const sagitta = (((fine.curvature[i] + fine.curvature[i + 1]) / 2) * chord) / 8;
    cellX[i] = (fine.x[i] + fine.x[i + 1]) / 2 - sagitta * dr;
    cellR[i] = -(fine.y[i] + fine.y[i + 1]) / 2 + sagitta * dx;
    cellDs[i] = chord;
  }
  for (let i = 0; i < count; i++) {
    const first = i * cellsPerPanel;
    const middle = first + cellsPerPanel / 2;
    nodes.x[i] = fine.x[middle];
    nodes.r[i] = -fine.y[middle];
    nodes.tangentX[i] = fine.tangentX[middle];
    nodes.tangentR[i] = -fine.tangentY[middle];
    nodes.arc[i] = fine.arc[middle];
    nodes.ds[i] = (i + 1 === count ? length : fine.arc[first + cellsPerPanel]) - fine.arc[first];
    curvature[i] = fine.curvature[middle];
  }
  return success({ count, ...nodes, length, curvature, cellX, cellR, cellDs });
}
