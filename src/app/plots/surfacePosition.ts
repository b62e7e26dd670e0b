/** How positions around a section are measured in the plots: from the front, upper side positive. */
export type PositionMeasure = "angle" | "arc";

export const positionAxisTitle: Record<PositionMeasure, string> = {
  angle: "angle from the front (degrees), upper side +",
  arc: "arc from the nose / D (–), upper side +",
};

export interface SurfacePoints {
  readonly x: Readonly<Float64Array>;
  readonly y: Readonly<Float64Array>;
  /** Arc length from the nose, counter-clockwise, m. */
  readonly arc: Readonly<Float64Array>;
  readonly perimeter: number;
  readonly centroid: readonly [number, number];
}

/**
 * Signed position of every node of a contour that is walked counter-clockwise from the nose (lower side first).
 * @param incidence  rad, nose up; the front is where the stream comes from
 * @param width  reference width, m
 * @returns degrees in (-180, 180], or arc / width in (-perimeter/2, perimeter/2] / width; shape [nodes]
 */
export function surfacePositions(
  points: SurfacePoints,
  measure: PositionMeasure,
  incidence: number,
  width: number,
): Float64Array {
  const { x, y, arc, perimeter, centroid } = points;
  const positions = new Float64Array(x.length);
  const cos = Math.cos(incidence);
  const sin = Math.sin(incidence);
  for (let i = 0; i < x.length; i++) {
    if (measure === "arc") {
      positions[i] = (arc[i] >= perimeter / 2 ? perimeter - arc[i] : -arc[i]) / width;
    } else {
      const dx = x[i] - centroid[0];
      const dy = y[i] - centroid[1];
      positions[i] = (Math.atan2(dy * cos - dx * sin, -(dx * cos + dy * sin)) * 180) / Math.PI;
    }
  }
  return positions;
}

/**
 * The nodes in walking order, from the lower side's rear over the nose to the upper side's rear: cut where the signed
 * position jumps, so that a line through them does not run across the plot.
 */
export function rearToRear(positions: Readonly<Float64Array>): number[] {
  const count = positions.length;
  let cut = 0;
  let largest = 0;
  for (let i = 0; i < count; i++) {
    const jump = Math.abs(positions[(i + 1) % count] - positions[i]);
    if (jump > largest) {
      largest = jump;
      cut = (i + 1) % count;
    }
  }
  const order = Array.from({ length: count }, (_, i) => (cut + i) % count);
  return positions[order[0]] > positions[order[count - 1]] ? order.reverse() : order;
}
