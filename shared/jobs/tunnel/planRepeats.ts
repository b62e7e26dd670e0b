import { coverageFactor } from "../../statistics/studentT";

/** Repeats that reach a wanted half-width, or the most allowed with what they reach. */
export interface PlannedRepeats {
  readonly repeats: number;
  /** Half of the confidence interval of the mean, in the unit of the scatter. */
  readonly halfWidth: number;
  readonly isReached: boolean;
}

/**
 * Repeats after which the mean of equal readings is known to a wanted half-width: the least n of at least 2 with
 * t_p(n - 1) s / sqrt(n) <= half-width. Source: Student (1908), Biometrika 6, 1-25; JCGM 100:2008, 4.2.3 and G.3.2.
 * @param scatter    standard deviation of one reading, above 0
 * @param halfWidth  wanted, above 0, in the same unit
 * @param confidence above 0 and below 1
 * @param most       2 or more
 */
export function plannedRepeats(scatter: number, halfWidth: number, confidence: number, most: number): PlannedRepeats {
  if (!(scatter >= 0 && halfWidth > 0 && most >= 2)) {
    throw new RangeError(`scatter ${scatter}, half-width ${halfWidth}, at most ${most} repeats; see the ranges above.`);
  }
  const reached = (n: number) => (coverageFactor(confidence, n - 1) * scatter) / Math.sqrt(n);
  for (let n = 2; n <= most; n++) {
    if (reached(n) <= halfWidth) return { repeats: n, halfWidth: reached(n), isReached: true };
  }
  return { repeats: most, halfWidth: reached(most), isReached: false };
}
