/**
 * Nodes of a section for the panel method: one panel per node, at equal steps of a smooth periodic parameter, so that
 * sums over the nodes are trapezoidal sums of a periodic integrand. Counter-clockwise, an even number of them, node 0 at the nose. Every array has shape [count].
 */
export interface SectionNodes {
  /** What the section is, for tables and plots. */
  readonly name: string;
  /** Number of nodes, even. */
  readonly count: number;
  /** Position, m. */
  readonly x: Float64Array;
  /** Position, m. */
  readonly y: Float64Array;
  /** Unit tangent, counter-clockwise; the outward normal is (tangentY, -tangentX). */
  readonly tangentX: Float64Array;
  /** Unit tangent, counter-clockwise. */
  readonly tangentY: Float64Array;
  /** Arc length per parameter step, (ds/dt) * 2 pi / count, m. */
  readonly ds: Float64Array;
  /** Arc length from the nose, m, increasing from 0 at node 0. */
  readonly arc: Float64Array;
  /** Curvature, 1/m, positive where convex. */
  readonly curvature: Float64Array;
  /** m */
  readonly perimeter: number;
  /** m^2 */
  readonly area: number;
  /** Of the area, m. */
  readonly centroid: readonly [number, number];
  /** True when the section is its own mirror image about the x axis. */
  readonly mirrorSymmetric: boolean;
}
