import type { ContourBend, ContourPoint } from "./contour";

/** A smooth open stretch of a contour, walked counter-clockwise, as functions of its own arc length. */
export interface ContourPiece {
  /** Arc length, m. */
  readonly length: number;
  /** At an arc length from the start of the piece, m, in [0, length]. */
  at(arc: number): ContourPoint;
  /** Its share of the contour's area integrals. */
  readonly moments: AreaMoments;
  /** Where it turns; arcs are counted from the start of the piece. */
  readonly bends: readonly ContourBend[];
}

/** Line integrals along a path that add up to the area and its first moments round a closed one (Green's theorem). */
export interface AreaMoments {
  /** Integral of (x dy - y dx) / 2, m^2. */
  readonly area: number;
  /** Integral of x^2 dy / 2, m^3. */
  readonly x: number;
  /** Integral of -y^2 dx / 2, m^3. */
  readonly y: number;
}

/** Position and first and second derivative by a parameter. */
export interface PathPoint {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
  readonly ddx: number;
  readonly ddy: number;
}

export type Path = (t: number) => PathPoint;
