import type { RandomDraws } from "../../statistics/randomDraws";

/** A choice, and a measurement before it. */
export interface InformationQuestion {
  /** Of every choice in the same draws, shape [choices][draws]. */
  readonly losses: readonly Readonly<Float64Array>[];
  /** What the measurement would show in each draw, without the noise of its values, shape [values][draws]. */
  readonly shown: readonly Readonly<Float64Array>[];
  /** Standard deviation of each value, independent of the others, above 0, shape [values]. */
  readonly noise: readonly number[];
  /** Probability from which a choice counts as the best, and one of a pair as the better. */
  readonly probability: number;
  /** Pairs of choices whose order is asked for. */
  readonly pairs: readonly (readonly [number, number])[];
}

/** What a measurement is worth to a decision, in the unit of the losses. */
export interface InformationValue {
  /** Expected loss above the best choice when the choice is made now. */
  readonly regretNow: number;
  /** The same, expected, when it is made after the measurement. */
  readonly regretAfter: number;
  /** Share of simulated measurements after which one choice is best with the wanted probability. */
  readonly decidedShare: number;
  /** The same of the order of each pair. */
  readonly pairDecidedShares: readonly number[];
}

/**
 * Expected value of sample information by simulation: every draw in turn is the truth, the measurement shows it with its
 * noise, all draws are weighed by the likelihood of what it showed, and the choice with the least expected loss is made.
 * Source: Raiffa & Schlaifer (1961), Applied Statistical Decision Theory, ch. 4 and 5.
 * @param simulations how many measurements are simulated
 */
export function valueOfInformation(
  { losses, shown, noise, probability, pairs }: InformationQuestion,
  simulations: number,
  draws: RandomDraws,
): InformationValue {
  if (shown.length !== noise.length) {
    throw new RangeError(`there are ${shown.length} values and ${noise.length} noises; both need the same number.`);
  }
  for (const own of noise) {
    if (!(own > 0)) throw new RangeError(`the measurement's noise is ${own}; it must be above 0.`);
  }
  const count = losses[0].length;
  const least = new Float64Array(count);
  const best = new Uint16Array(count);
  for (let k = 0; k < count; k++) {
    let found = 0;
    for (let i = 1; i < losses.length; i++) if (losses[i][k] < losses[found][k]) found = i;
    best[k] = found;
    least[k] = losses[found][k];
  }
  const less = pairs.map(([i, j]) => losses[i].map((loss, k) => lessShare(loss, losses[j][k])));
  const even = new Float64Array(count).fill(1 / count);
  const weights = new Float64Array(count);
  let after = 0;
  let decided = 0;
  const pairDecided = pairs.map(() => 0);
  for (let s = 0; s < simulations; s++) {
    // Every part of the draws is the truth equally often.
    const truth = Math.floor(((s + draws.uniform()) / simulations) * count);
    const seen = shown.map((values, v) => values[truth] + noise[v] * draws.normal());
    likelihoods(shown, noise, seen, weights);
    after += leastRegret(losses, least, weights);
    if (largestShare(best, weights, losses.length) >= probability) decided++;
    less.forEach((shares, p) => {
      let sum = 0;
      for (let k = 0; k < count; k++) sum += weights[k] * shares[k];
      if (sum >= probability || 1 - sum >= probability) pairDecided[p]++;
    });
  }
  return {
    regretNow: leastRegret(losses, least, even),
    regretAfter: after / simulations,
    decidedShare: decided / simulations,
    pairDecidedShares: pairDecided.map((n) => n / simulations),
  };
}

function lessShare(a: number, b: number): number {
  if (a === b) return 1 / 2;
  return a < b ? 1 : 0;
}

/** Weights of the draws that add up to 1. */
function likelihoods(
  shown: InformationQuestion["shown"],
  noise: readonly number[],
  seen: readonly number[],
  weights: Float64Array,
): void {
  weights.fill(0);
  shown.forEach((values, v) => {
    for (let k = 0; k < weights.length; k++) weights[k] -= ((seen[v] - values[k]) / noise[v]) ** 2 / 2;
  });
  let most = Number.NEGATIVE_INFINITY;
  for (const value of weights) most = Math.max(most, value);
  let total = 0;
  for (let k = 0; k < weights.length; k++) {
    weights[k] = Math.exp(weights[k] - most);
    total += weights[k];
  }
  for (let k = 0; k < weights.length; k++) weights[k] /= total;
}

/** Expected loss above the best choice of each draw, of the choice where it is least. */
function leastRegret(
  losses: readonly Readonly<Float64Array>[],
  least: Readonly<Float64Array>,
  weights: Readonly<Float64Array>,
): number {
  return Math.min(
    ...losses.map((own) => {
      let sum = 0;
      for (let k = 0; k < weights.length; k++) sum += weights[k] * (own[k] - least[k]);
      return sum;
    }),
  );
}

function largestShare(best: Readonly<Uint16Array>, weights: Readonly<Float64Array>, choices: number): number {
  const shares = new Float64Array(choices);
  for (let k = 0; k < weights.length; k++) shares[best[k]] += weights[k];
  return Math.max(...shares);
}
