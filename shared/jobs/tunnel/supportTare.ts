import { mean } from "../../statistics/sample";
import type { RunPoint } from "./runPoints";

/** Drag area of the support alone at one dynamic pressure. */
export interface SupportDrag {
  /** m^2. */
  readonly dragArea: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
}

/** Degrees of freedom below which a stated noise is the better estimate. A choice, no source. */
const leastFreedom = 3;

/**
 * Drag area of the support between the speeds at which it was measured: linear in the dynamic pressure, kept beyond the
 * ends. Its uncertainty is the scatter of all repeats together over the readings of one speed; with too few repeats to
 * tell, it is that of the balance's stated noise.
 * @param noise standard deviation of one reading, N; null when not known
 * @returns null without runs of the support
 */
export function supportTare(
  points: readonly RunPoint[],
  noise: number | null,
): ((dynamicPressure: number) => SupportDrag) | null {
  if (points.length === 0) return null;
  const levels = points
    .map(({ readings }) => {
      const n = readings.length;
      const dragArea = mean(readings.map((each) => each.dragArea));
      const dynamicPressure = mean(readings.map((each) => each.dynamicPressure));
      // Scatter as a force, so that speeds can be put together.
      const squares = readings.reduce((sum, each) => sum + ((each.dragArea - dragArea) * dynamicPressure) ** 2, 0);
      return { dynamicPressure, dragArea, n, squares };
    })
    .sort((a, b) => a.dynamicPressure - b.dynamicPressure);
  const freedom = levels.reduce((sum, { n }) => sum + n - 1, 0);
  const squares = levels.reduce((sum, level) => sum + level.squares, 0);
  const isOwn = freedom > 0 && (freedom >= leastFreedom || noise === null);
  const scatter = isOwn ? Math.sqrt(squares / freedom) : (noise ?? 0);
  return (dynamicPressure) => {
    const above = levels.findIndex((level) => level.dynamicPressure >= dynamicPressure);
    const b = levels[above < 0 ? levels.length - 1 : above];
    const a = above <= 0 ? b : levels[above - 1];
    const width = b.dynamicPressure - a.dynamicPressure;
    const share = width > 0 ? (dynamicPressure - a.dynamicPressure) / width : 1;
    const part = (level: (typeof levels)[number]) => scatter / (level.dynamicPressure * Math.sqrt(level.n));
    return {
      dragArea: (1 - share) * a.dragArea + share * b.dragArea,
      standardUncertainty: Math.hypot((1 - share) * part(a), share * part(b)),
      degreesOfFreedom: isOwn ? freedom : Number.POSITIVE_INFINITY,
    };
  };
}
