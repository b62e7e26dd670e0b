import type { Regime } from "../../../engine/solution";
import type { DragBand } from "../../../engine/trust/dragInterval";
import { intervalAt } from "../../../numerics/tableLookup";
import { mean } from "../../../statistics/sample";

/** A published end relief: drag of a cylinder with two free ends over that of a long one, by length / width. */
export interface EndReliefTable {
  readonly source: string;
  /** Pairs of length / width and drag ratio, rising. */
  readonly points: readonly (readonly [number, number])[];
}

/** Measured or prescribed below the drag crisis. */
export const subcriticalEndRelief: readonly EndReliefTable[] = [
  {
    source: "White, Fluid Mechanics, table 7.3 (from memory), over 1.20 for a long cylinder",
    points: [0.64, 0.68, 0.72, 0.74, 0.82, 0.91, 0.98].map((Cd, i) => [[1, 2, 3, 5, 10, 20, 40][i], Cd / 1.2] as const),
  },
  {
    source: "Wieselsberger (1922), NACA TN 121, digitised, over 1.19 for a long cylinder",
    points: (
      [
        [0.998, 0.614],
        [0.498, 0.687],
        [0.341, 0.744],
        [0.2, 0.737],
        [0.0998, 0.82],
        [0.049, 0.926],
        [0.0237, 0.986],
      ] as const
    ).map(([widthOverLength, Cd]) => [1 / widthOverLength, Cd / 1.19] as const),
  },
  {
    source: "DNV-RP-C205 (2025), reduction factor for Re below 2e5",
    points: [
      [2, 0.58],
      [5, 0.62],
      [10, 0.68],
      [20, 0.74],
      [40, 0.82],
      [50, 0.87],
      [100, 0.98],
    ],
  },
];

/** Without regard to the regime. */
export const codeEndRelief: EndReliefTable = {
  source: "EN 1991-1-4 (2005), fig. 7.36, solid body",
  points: [
    [1, 0.6],
    [10, 0.698],
    [70, 0.918],
  ],
};

export const supercriticalEndRelief: EndReliefTable = {
  source: "DNV-RP-C205 (2025), reduction factor for Re of 2e5 and more",
  points: [
    [2, 0.8],
    [5, 0.8],
    [10, 0.82],
    [20, 0.9],
    [40, 0.98],
    [50, 0.99],
    [100, 1],
  ],
};

/** Smallest length / width that any of the tables measured; below it the result is an extrapolation. */
export const shortestMeasuredRatio = 1;

export const endReliefCaution =
  "No measured drag of a cylinder across the stream was found below length/diameter 1. The end relief used here carries the published tables on beyond their last points: an extrapolation, to be tested before it is relied on.";

/**
 * Drag of a body of finite length across the stream, both ends free, over that of an endless one.
 * Below the crisis: the mean of four published tables, the band from the lowest to the highest. Above it the only table
 * found has much less relief; the band reaches from the table without regime to no relief at all. In the critical range
 * the mean of both, the band spanning both. Each table is linear in log(length / width) and goes on with its last slope
 * below its first point.
 * @param lengthOverWidth above 0
 */
export function endRelief(lengthOverWidth: number, regime: Regime): DragBand {
  if (!(lengthOverWidth > 0)) throw new RangeError(`length / width is ${lengthOverWidth}; it must be above 0.`);
  const code = reliefFrom(codeEndRelief, lengthOverWidth);
  const below = [...subcriticalEndRelief.map((table) => reliefFrom(table, lengthOverWidth)), code];
  const subcritical = {
    low: Math.min(...below),
    expected: mean(below),
    high: Math.max(...below),
  };
  if (regime === "subcritical") return subcritical;
  const expected = reliefFrom(supercriticalEndRelief, lengthOverWidth);
  const supercritical = { low: Math.min(code, expected), expected, high: 1 };
  if (regime !== "critical") return supercritical;
  return {
    low: subcritical.low,
    expected: (subcritical.expected + supercritical.expected) / 2,
    high: supercritical.high,
  };
}

/** Value of one table, at most 1 and not below 0. */
export function reliefFrom({ points }: EndReliefTable, lengthOverWidth: number): number {
  const last = points.length - 1;
  if (lengthOverWidth >= points[last][0]) return points[last][1];
  const i = intervalAt(
    points.map(([ratio]) => ratio),
    lengthOverWidth,
  );
  const [[r1, v1], [r2, v2]] = [points[i], points[i + 1]];
  const value = v1 + ((v2 - v1) * Math.log(lengthOverWidth / r1)) / Math.log(r2 / r1);
  return Math.min(1, Math.max(0, value));
}
