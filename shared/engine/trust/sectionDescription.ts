import { referenceWidth } from "../geometry/referenceWidth";
import type { SectionNodes } from "../geometry/sectionNodes";
import type { LayerMethodName } from "../layer/layerMethodName";

/** What a section is in the terms of published shapes, as the stream meets it. */
export interface SectionDescription {
  readonly shape: "circle" | "ellipse" | "rectangle" | "other";
  /** Extent along the stream over the extent across it. */
  readonly lengthToHeight: number;
  /** Radius of the corners over the extent across the stream; only of rectangles. */
  readonly cornerRadiusToHeight: number | null;
  /**
   * True when the section lies between the ellipse and the rectangle of its length and height and is nowhere hollow:
   * superellipses, sections with bevelled or partly rounded corners, polygons of many sides.
   */
  readonly betweenEllipseAndRectangle: boolean;
  /** True when a section meets the stream neither along nor across its axes; a circle never does. */
  readonly inclined: boolean;
  /** True when a floor lies below the section. */
  readonly nearFloor: boolean;
  /** How its boundary layers are worked out; "integral" when left out. */
  readonly layerMethod?: LayerMethodName;
}

/** Nodes may leave a named shape by this part of the smaller extent. */
const shapeTolerance = 3e-3;
/** Curvature times height below which a section counts as hollow. */
const hollowCurvature = -0.02;

/**
 * Recognises circles, ellipses and rectangles with equally rounded corners (stadiums included) from the nodes alone, so
 * that it does not matter how a contour was made.
 * @param incidence angle of the stream to the x axis, rad
 * @param nearFloor whether a floor lies below the section
 */
export function describeSection(nodes: SectionNodes, incidence: number, nearFloor = false): SectionDescription {
  const height = referenceWidth(nodes, incidence);
  const length = referenceWidth(nodes, incidence + Math.PI / 2);
  const along = (i: number) => streamwise(nodes, i, incidence);
  const across = (i: number) => streamwise(nodes, i, incidence + Math.PI / 2);
  const lengthToHeight = length / height;
  const tolerance = shapeTolerance * Math.min(length, height);
  const common = {
    lengthToHeight,
    cornerRadiusToHeight: null,
    betweenEllipseAndRectangle: true,
    inclined: false,
    nearFloor,
  };

  let innermost = Number.POSITIVE_INFINITY;
  let outermost = 0;
  for (let i = 0; i < nodes.count; i++) {
    const radius = Math.hypot(2 * (along(i) / length), 2 * (across(i) / height));
    innermost = Math.min(innermost, radius);
    outermost = Math.max(outermost, radius);
  }
  if (innermost > 1 - shapeTolerance && outermost < 1 + shapeTolerance) {
    return { ...common, shape: Math.abs(lengthToHeight - 1) < shapeTolerance ? "circle" : "ellipse" };
  }

  // Four rounded corners take (4 - pi) r^2 off the rectangle's area.
  const radius = Math.sqrt(Math.max(0, length * height - nodes.area) / (4 - Math.PI));
  const distance = (i: number) =>
    roundedRectangleDistance(Math.abs(along(i)), Math.abs(across(i)), length / 2 - radius, height / 2 - radius, radius);
  const fits = (i: number) => Math.abs(distance(i)) <= tolerance;
  if (radius <= Math.min(length, height) / 2 + tolerance && everyNode(nodes, fits)) {
    return { ...common, shape: "rectangle", cornerRadiusToHeight: radius / height };
  }
  return {
    ...common,
    shape: "other",
    betweenEllipseAndRectangle:
      innermost > 1 - shapeTolerance && everyNode(nodes, (i) => nodes.curvature[i] * height >= hollowCurvature),
    inclined: Math.abs(Math.sin(2 * incidence)) > 1e-6,
  };
}

/** Position of a node along a direction from the centroid, m. */
function streamwise({ x, y, centroid }: SectionNodes, i: number, direction: number): number {
  return (x[i] - centroid[0]) * Math.cos(direction) + (y[i] - centroid[1]) * Math.sin(direction);
}

function everyNode(nodes: SectionNodes, holds: (i: number) => boolean): boolean {
  for (let i = 0; i < nodes.count; i++) if (!holds(i)) return false;
  return true;
}

/** Signed distance of a point of the first quadrant to a rounded rectangle whose corner centres are (centreX, centreY). */
function roundedRectangleDistance(x: number, y: number, centreX: number, centreY: number, radius: number): number {
  const beyondX = x - centreX;
  const beyondY = y - centreY;
  if (beyondX > 0 && beyondY > 0) return Math.hypot(beyondX, beyondY) - radius;
  return Math.max(beyondX, beyondY) - radius;
}
