import { normalQuantile } from "../../statistics/normal";
import type { PuckResult } from "../puck/public";

/** How a puck meets the water in play. */
export type DragAttitude = "upright" | "flat" | "faceOn";

/** Drag / dynamic pressure, m^2, 5 % to 95 %. */
export interface DragAreaBand {
  readonly low: number;
  readonly expected: number;
  readonly high: number;
}

/**
 * The one place where other jobs read a puck's drag: its bands at the speed of the results nearest to one, one for every
 * turbulence. Empty where the puck was not solved.
 * @param speed m/s
 */
export function dragAreaBands({ drag }: PuckResult, attitude: DragAttitude, speed: number): DragAreaBand[] {
  const rows = drag.filter(({ orientation }) => orientation === attitude);
  const speeds = [...new Set(rows.map((row) => row.speedMetresPerSecond))];
  const nearest = speeds.reduce(
    (best, own) => (Math.abs(Math.log(own / speed)) < Math.abs(Math.log(best / speed)) ? own : best),
    speeds[0],
  );
  return rows
    .filter((row) => row.speedMetresPerSecond === nearest)
    .map(({ dragAreaSquareMetres: { low, expected, high } }) => ({ low, expected, high }));
}

/** Quantile of the standard normal distribution at the ends of a band from 5 to 95 %. */
const bandEnd = normalQuantile(0.95);

/**
 * The drag area at a standard normal draw: in its logarithm, each half of the band is taken as half of a normal
 * distribution.
 */
export function dragAreaAt({ low, expected, high }: DragAreaBand, normalDraw: number): number {
  // A mean may lie beyond an end of a very skew band.
  const end = Math.max(1, normalDraw < 0 ? expected / low : high / expected);
  return expected * end ** (normalDraw / bandEnd);
}
