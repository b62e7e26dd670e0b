import { findRoot } from "../numerics/rootFinder";

/** Density of the standard normal distribution. */
export function normalDensity(x: number): number {
  return Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
}

/**
 * Distribution function of the standard normal distribution, within 1e-7.
 * Source: Abramowitz & Stegun (1964), eq. 7.1.26 (Hastings 1955).
 */
export function normalDistribution(x: number): number {
  const z = Math.abs(x) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * z);
  const sum = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = (sum * Math.exp(-z * z)) / 2;
  return x > 0 ? 1 - tail : tail;
}

/** Beyond this many standard deviations nothing is looked for. */
const FURTHEST = 8;

/** The x below which a standard normal draw lies with a probability. @param probability above 0, below 1 */
export function normalQuantile(probability: number): number {
  if (!(probability > 0 && probability < 1)) {
    throw new RangeError(`the probability is ${probability}; it must lie between 0 and 1.`);
  }
  return findRoot((x) => normalDistribution(x) - probability, -FURTHEST, FURTHEST, {
    tolerance: 1e-9,
    slope: normalDensity,
  });
}
