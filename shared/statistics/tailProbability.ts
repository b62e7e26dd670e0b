import { incompleteBeta } from "./incompleteBeta";
import { upperIncompleteGamma } from "./incompleteGamma";

/**
 * Probability that chi-square is at least x. Source: Abramowitz & Stegun (1964), 26.4.19.
 * @param x                0 or more
 * @param degreesOfFreedom above 0
 */
export function chiSquareTail(x: number, degreesOfFreedom: number): number {
  if (!(degreesOfFreedom > 0))
    throw new RangeError(`degrees of freedom are ${degreesOfFreedom}; they must be above 0.`);
  return x > 0 ? upperIncompleteGamma(degreesOfFreedom / 2, x / 2) : 1;
}

/**
 * Probability that F is at least x. Source: Abramowitz & Stegun (1964), 26.6.2.
 * @param x           0 or more, Infinity allowed
 * @param numerator   degrees of freedom, above 0
 * @param denominator degrees of freedom, above 0
 */
export function fTail(x: number, numerator: number, denominator: number): number {
  if (!(numerator > 0 && denominator > 0)) {
    throw new RangeError(`degrees of freedom are ${numerator} and ${denominator}; both must be above 0.`);
  }
  if (!(x > 0)) return 1;
  if (!Number.isFinite(x)) return 0;
  return incompleteBeta(denominator / (denominator + numerator * x), denominator / 2, numerator / 2);
}
