import { gradeNodes } from "../../shared/engine/geometry/gradedNodes";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import type { Result } from "../../shared/result";

/** The value of a result that a test takes for granted. */
export function unwrap<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}

/** Nodes of a section with a given number of panels. */
export function nodesOf(spec: SectionSpec, panelCount: number): SectionNodes {
  return unwrap(gradeNodes(unwrap(buildContour(spec)), panelCount));
}

/** The same nodes without their symmetry, so that the full equation is solved. */
export function unfolded(nodes: SectionNodes): SectionNodes {
  return { ...nodes, mirrorSymmetric: false };
}

/** Polar angle of every node about the origin, rad. */
export function polarAngles(nodes: SectionNodes): Float64Array {
  return nodes.x.map((x, i) => Math.atan2(nodes.y[i], x));
}

/** Largest difference of two arrays. */
export function largestDifference(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let largest = 0;
  for (let i = 0; i < b.length; i++) largest = Math.max(largest, Math.abs(a[i] - b[i]));
  return largest;
}
