import type { RandomDraws } from "../../statistics/randomDraws";

/** What a measurement is worth to a decision, in the unit of the losses. */
export interface InformationValue {
  /** Expected loss above the best choice when the choice is made now. */
  readonly regretNow: number;
  /** The same, expected, when it is made after the measurement. */
  readonly regretAfter: number;
  /** Share of simulated measurements after which one choice is best with the wanted probability. */
  readonly decidedShare: number;
}

/**
 * Expected value of sample information by simulation: every draw in turn is the truth, the measurement shows it with its
 * noise, all draws are weighed by the likelihood of what it showed, and the choice with the least expected loss is made.
 * Source: Raiffa & Schlaifer (1961), Applied Statistical Decision Theory, ch. 4 and 5.
 * @param losses      of every choice in the same draws, shape [choices][draws]
 * @param shown       what the measurement would show in each draw, without its noise, shape [draws]
 * @param noise       standard deviation of the measurement, above 0
 * @param simulations how many measurements are simulated
 * @param probability with which one choice must be the best to count as decided
 */
export function valueOfInformation(
  losses: readonly Readonly<Float64Array>[],
  shown: Readonly<Float64Array>,
  noise: number,
  simulations: number,
  probability: number,
  draws: RandomDraws,
): InformationValue {
  if (!(noise > 0)) throw new RangeError(`the measurement's noise is ${noise}; it must be above 0.`);
  const count = shown.length;
  const least = new Float64Array(count);
  const best = new Uint16Array(count);
  for (let k = 0; k < count; k++) {
    let found = 0;
    for (let i = 1; i < losses.length; i++) if (losses[i][k] < losses[found][k]) found = i;
    best[k] = found;
    least[k] = losses[found][k];
  }
  const even = new Float64Array(count).fill(1 / count);
  const weights = new Float64Array(count);
  let after = 0;
  let decided = 0;
  for (let s = 0; s < simulations; s++) {
    // Every part of the draws is the truth equally often.
    const truth = Math.floor(((s + draws.uniform()) / simulations) * count);
    const seen = shown[truth] + noise * draws.normal();
    let total = 0;
    for (let k = 0; k < count; k++) {
      weights[k] = Math.exp(-(((seen - shown[k]) / noise) ** 2) / 2);
      total += weights[k];
    }
    for (let k = 0; k < count; k++) weights[k] /= total;
    after += leastRegret(losses, least, weights);
    if (largestShare(best, weights, losses.length) >= probability) decided++;
  }
  return {
    regretNow: leastRegret(losses, least, even),
    regretAfter: after / simulations,
    decidedShare: decided / simulations,
  };
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
