import { findRoot } from "../numerics/rootFinder";
import { normalDensity, normalDistribution } from "./normal";

/** A weighted sum of normal distributions. Arrays have shape [components]. */
export interface NormalMixture {
  /** Add up to 1. */
  readonly weights: Readonly<Float64Array>;
  readonly means: Readonly<Float64Array>;
  /** Above 0. */
  readonly deviations: Readonly<Float64Array>;
}

/** Probability of a draw below x. */
export function mixtureDistribution({ weights, means, deviations }: NormalMixture, x: number): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += weights[i] * normalDistribution((x - means[i]) / deviations[i]);
  return sum;
}

export function mixtureDensity({ weights, means, deviations }: NormalMixture, x: number): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) {
    sum += (weights[i] * normalDensity((x - means[i]) / deviations[i])) / deviations[i];
  }
  return sum;
}

/** Beyond this many standard deviations of any component nothing is looked for. */
const FURTHEST = 8;

/** The x below which a draw lies with a probability. @param probability above 0, below 1 */
export function mixtureQuantile(mixture: NormalMixture, probability: number): number {
  const { means, deviations } = mixture;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < means.length; i++) {
    low = Math.min(low, means[i] - FURTHEST * deviations[i]);
    high = Math.max(high, means[i] + FURTHEST * deviations[i]);
  }
  return findRoot((x) => mixtureDistribution(mixture, x) - probability, low, high, {
    tolerance: 1e-7 * (high - low),
    slope: (x) => mixtureDensity(mixture, x),
  });
}

/** Mean of exp(x) of a draw x. */
export function meanExponential({ weights, means, deviations }: NormalMixture): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += weights[i] * Math.exp(means[i] + deviations[i] ** 2 / 2);
  return sum;
}

/** The same mixture with an independent normal draw of mean zero added. @param deviation of that draw, by component */
export function widened(mixture: NormalMixture, deviation: (component: number) => number): NormalMixture {
  return { ...mixture, deviations: mixture.deviations.map((own, i) => Math.hypot(own, deviation(i))) };
}

/**
 * Continuous ranked probability score of a mixture for what came: the integral of (distribution - step)^2, 0 is expected.
 * Source: Gneiting & Raftery (2007), J. Am. Stat. Assoc. 102, 359; of mixtures Grimit et al. (2006), Q. J. R. Meteorol.
 * Soc. 132, 2925.
 */
export function mixtureScore({ weights, means, deviations }: NormalMixture, came: number): number {
  let score = 0;
  for (let i = 0; i < weights.length; i++) {
    score += weights[i] * meanDistance(came - means[i], deviations[i]);
    for (let j = 0; j < weights.length; j++) {
      score -=
        (weights[i] * weights[j] * meanDistance(means[i] - means[j], Math.hypot(deviations[i], deviations[j]))) / 2;
    }
  }
  return score;
}

/** Mean distance from 0 of a normal draw. */
function meanDistance(mean: number, deviation: number): number {
  const z = mean / deviation;
  return 2 * deviation * normalDensity(z) + mean * (2 * normalDistribution(z) - 1);
}
