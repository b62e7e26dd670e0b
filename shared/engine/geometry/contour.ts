/**
 * A closed, smooth, simple contour walked counter-clockwise, as functions of arc length.
 *
 * Axes: x along the stream at zero incidence, y upward; metres. The walk starts (arc 0) at the nose, the point where
 * the ray from the centroid against the stream (direction -x) leaves the section, so the lower surface comes first.
 */
export interface Contour {
  /** Name of the section for tables and plots, for instance "rounded rectangle 80 x 30 mm, edge radius 6 mm". */
  readonly name: string;
  /** Total arc length, m. */
  readonly perimeter: number;
  /** Enclosed area, m^2. */
  readonly area: number;
  /** Of the enclosed area, m. */
  readonly centroid: readonly [number, number];
  /** Position, unit tangent (counter-clockwise) and curvature (1/m, positive where convex) at an arc length, m; periodic. */
  at(arc: number): ContourPoint;
  /** True when the mirror image in the x axis through the centroid is the same contour. */
  readonly mirrorSymmetric: boolean;
  /** The curved parts of the contour cut into short stretches, in order of arc; their turning adds up to 2 pi. */
  readonly bends: readonly ContourBend[];
  /**
   * For families that have one: a smooth parameter t, 0 at the nose and 2 pi after one turn, whose equal steps suit a
   * panel method. Gives the arc length, m, and its derivative by t.
   */
  readonly naturalParameter?: (t: number) => {
    /** Arc length from the nose, m. */
    readonly arc: number;
    /** Its derivative by t, m. */
    readonly arcRate: number;
  };
}

/** A short stretch of a contour: its middle (arc length from the nose, m), its length (m) and how far it turns. */
export interface ContourBend {
  readonly arc: number;
  readonly length: number;
  /** rad, positive where convex. */
  readonly turning: number;
}

/** A point of a contour, its tangent and its curvature. */
export interface ContourPoint {
  /** Position, m. */
  readonly x: number;
  /** Position, m. */
  readonly y: number;
  /** Unit tangent, counter-clockwise. */
  readonly tangentX: number;
  /** Unit tangent, counter-clockwise. */
  readonly tangentY: number;
  /** 1/m, positive where convex. */
  readonly curvature: number;
}
