/** A regular pattern on a surface. Lengths in m. */
export interface SurfacePattern {
  /** What repeats on the surface. */
  readonly kind: "grooves" | "ridges" | "dimples";
  /** Depth of grooves and dimples, height of ridges. */
  readonly depth: number;
  /** Width of a groove or ridge, diameter of a dimple. */
  readonly width: number;
  /** From the middle of one to the middle of the next. */
  readonly pitch: number;
}

/** What statistics of heights say of a pattern. */
export interface PatternHeights {
  /** Root mean square of the heights about their mean, m. */
  readonly rootMeanSquare: number;
  /** Third central moment over the cube of the root mean square: below 0 for pits, above 0 for peaks. */
  readonly skewness: number;
}

/**
 * Height statistics of a pattern: rectangular grooves and ridges, dimples as paraboloids in a square array.
 * The pattern must have passed its checks (0 < width <= pitch, depth above 0).
 */
export function patternHeights({ kind, depth, width, pitch }: SurfacePattern): PatternHeights {
  if (kind === "dimples") {
    const share = (Math.PI / 4) * (width / pitch) ** 2;
    // Over a paraboloid the depth is spread evenly between 0 and its greatest value.
    const mean = -share / 2;
    const variance = share / 3 - mean ** 2;
    const third = -share / 4 - 3 * mean * variance - mean ** 3;
    return { rootMeanSquare: depth * Math.sqrt(variance), skewness: third / variance ** 1.5 };
  }
  const share = width / pitch;
  const spread = Math.sqrt(share * (1 - share));
  const peaks = (1 - 2 * share) / spread;
  return { rootMeanSquare: depth * spread, skewness: kind === "ridges" ? peaks : -peaks };
}
