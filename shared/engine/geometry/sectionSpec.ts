/**
 * The section families and their dimensions. Lengths in metres; x is along the stream at zero incidence, y across it.
 * Dimensions are those of the finished, rounded section unless a line says otherwise.
 */
export type SectionSpec =
  | CircleSpec
  | EllipseSpec
  | RoundedRectangleSpec
  | SuperellipseSpec
  | StadiumSpec
  | BevelledRectangleSpec
  | DShapeSpec
  | RoundedPolygonSpec
  | RoundedTriangleSpec
  | FreeContourSpec
  | OutlineSpec;

/** The name of a family. */
export type SectionFamily = SectionSpec["family"];

/** The specification of one family. */
export type SpecOf<F extends SectionFamily> = Extract<SectionSpec, { family: F }>;

/** A circular cylinder. */
export interface CircleSpec {
  /** Tells the families apart. */
  readonly family: "circle";
  /** m */
  readonly diameter: number;
}

/** An ellipse with its axes along and across the stream at zero incidence. */
export interface EllipseSpec {
  /** Tells the families apart. */
  readonly family: "ellipse";
  /** Axis along x, m. */
  readonly length: number;
  /** Axis along y, m. */
  readonly height: number;
}

/** A rectangle whose four edges are rounded alike. */
export interface RoundedRectangleSpec {
  /** Tells the families apart. */
  readonly family: "roundedRectangle";
  /** Along x, m. */
  readonly length: number;
  /** Along y, m. */
  readonly height: number;
  /** Radius of all four edges, m; from 1 % to 50 % of the smaller of length and height. */
  readonly edgeRadius: number;
}

/** |2x/length|^exponent + |2y/height|^exponent = 1. */
export interface SuperellipseSpec {
  /** Tells the families apart. */
  readonly family: "superellipse";
  /** Along x, m. */
  readonly length: number;
  /** Along y, m. */
  readonly height: number;
  /** From 2 (the ellipse) to 20 (nearly a rectangle). */
  readonly exponent: number;
}

/** A rectangle with two semicircular ends, on its shorter sides. */
export interface StadiumSpec {
  /** Tells the families apart. */
  readonly family: "stadium";
  /** Along x over all, m. */
  readonly length: number;
  /** Along y over all, m. */
  readonly height: number;
}

/** A rectangle whose four edges are cut straight. The six or eight corners left over are rounded by cornerRadius. */
export interface BevelledRectangleSpec {
  /** Tells the families apart. */
  readonly family: "bevelledRectangle";
  /** Along x, m; of the sharp outline, which rounding shortens only where the bevels meet in a point. */
  readonly length: number;
  /** Along y, m; of the sharp outline. */
  readonly height: number;
  /** Leg of the bevel along x, m; at most half the length. */
  readonly bevelLength: number;
  /** Leg of the bevel along y, m; at most half the height. */
  readonly bevelHeight: number;
  /** m; at least 1 % of the smaller of length and height. */
  readonly cornerRadius: number;
}

/** A half-ellipse nose, straight sides, and a flat face with two rounded corners. */
export interface DShapeSpec {
  /** Tells the families apart. */
  readonly family: "dShape";
  /** Along x over all, m. */
  readonly length: number;
  /** Along y over all, m. */
  readonly height: number;
  /**
   * Semi-axis of the half ellipse along x, m; half the height makes it a semicircle. From 10 % of the height to
   * length - cornerRadius.
   */
  readonly noseLength: number;
  /** Radius of the two corners of the flat face, m; from 1 % of the smaller dimension to half the height. */
  readonly cornerRadius: number;
  /** Which end is flat; the stream meets the front first. */
  readonly flatSide: "front" | "rear";
}

/** A regular polygon with rounded corners. */
export interface RoundedPolygonSpec {
  /** Tells the families apart. */
  readonly family: "roundedPolygon";
  /** Number of sides, a whole number from 3 to 24. */
  readonly sides: number;
  /** Diameter of the circle that touches all sides from inside (the distance across flats when sides is even), m. */
  readonly inscribedDiameter: number;
  /** m; from 1 % to 50 % of inscribedDiameter (50 % is the circle). */
  readonly cornerRadius: number;
  /** What the stream meets first at zero incidence. */
  readonly facing: "flat" | "corner";
}

/** An isosceles triangle, symmetric about the x axis, with rounded corners. */
export interface RoundedTriangleSpec {
  /** Tells the families apart. */
  readonly family: "roundedTriangle";
  /** Along x over all, after rounding, m. */
  readonly length: number;
  /** Along y over all, after rounding, m. */
  readonly height: number;
  /** Radius of all three corners, m; from 1 % to 50 % of the smaller of length and height. */
  readonly cornerRadius: number;
  /** Whether the apex points against the stream or down it. */
  readonly apex: "forward" | "rearward";
}

/** A closed smooth curve through given points. */
export interface FreeContourSpec {
  /** Tells the families apart. */
  readonly family: "freeContour";
  /** [x, y] pairs along the contour in either direction, m; 8 to 2000 of them; a repeated first point is dropped. */
  readonly points: readonly (readonly [number, number])[];
  /** For tables and plots; "free contour" when absent. */
  readonly name?: string;
}

/** A closed outline of lines, circular arcs and cubic curves, whose corners are rounded. */
export interface OutlineSpec {
  /** Tells the families apart. */
  readonly family: "outline";
  /** Sides in order, in either direction round the section; each ends where the next one starts. 2 to 2000 of them. */
  readonly sides: readonly OutlineSide[];
  /**
   * Radius that the corners get, m; at least 1 % of the smaller of length and height, which is what they get when it is
   * left out. Corners so slight that a larger radius stays within 0.01 % of that dimension get the larger one.
   */
  readonly cornerRadius?: number;
  /** For tables and plots; "outline" when absent. */
  readonly name?: string;
}

/** One side of an outline, from its own start to the start of the next: straight unless it says otherwise. */
export interface OutlineSide {
  /** Start [x, y], m. */
  readonly from: readonly [number, number];
  /** Tangent of a quarter of the angle that a circular arc turns, positive to the left; the convention of DXF polylines. */
  readonly bulge?: number;
  /** The two inner control points [x, y] of a cubic Bézier curve, m. */
  readonly controls?: readonly [readonly [number, number], readonly [number, number]];
}
