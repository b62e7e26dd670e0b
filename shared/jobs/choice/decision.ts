import { drawnBand } from "../../statistics/drawnBand";
import { mean } from "../../statistics/sample";
import type { ChoiceDecision, DecidingCriterion } from "./choiceResult";

/** What is compared: a candidate's values, shape [criteria][draws]. */
interface Compared {
  readonly name: string;
  readonly values: readonly Float64Array[];
}

/**
 * What decides between two candidates: the difference of their values by criterion.
 * @param weights shape [criteria][draws]
 */
export function decisionBetween(
  first: Compared,
  second: Compared,
  probabilityBetter: number,
  weights: readonly Float64Array[],
  names: readonly string[],
): ChoiceDecision {
  const contributions = weights.map((weight, j) =>
    weight.map((w, k) => w * (first.values[j][k] - second.values[j][k])),
  );
  const difference = contributions[0].map((_, k) => contributions.reduce((sum, column) => sum + column[k], 0));
  const differenceMean = mean(difference);
  const variance = mean(difference.map((value) => (value - differenceMean) ** 2));
  const gaps = names.map((_, j) => mean(first.values[j]) - mean(second.values[j]));
  const weightMeans = weights.map((column) => mean(column));
  const criteria = names.map((criterion, j): DecidingCriterion => {
    const own = contributions[j];
    const ownMean = mean(own);
    const covariance = mean(own.map((value, k) => (value - ownMean) * (difference[k] - differenceMean)));
    return {
      criterion,
      contribution: drawnBand(own),
      varianceSharePercent: variance > 0 ? (100 * covariance) / variance : 0,
      turningWeight: turningWeight(gaps, weightMeans, j),
    };
  });
  return {
    first: first.name,
    second: second.name,
    probabilityBetter,
    criteria,
    sentence: sentenceOf(first.name, second.name, probabilityBetter, criteria),
  };
}

/**
 * The weight of one criterion at which the weighted gaps add up to 0 while the others keep their proportions: with g the
 * own gap and G the mean gap of the others, t g + (1 - t) G = 0.
 */
export function turningWeight(gaps: readonly number[], weights: readonly number[], own: number): number | null {
  const others = weights.reduce((sum, weight, j) => sum + (j === own ? 0 : weight), 0);
  if (!(others > 0)) return null;
  const G = gaps.reduce((sum, gap, j) => sum + (j === own ? 0 : (weights[j] / others) * gap), 0);
  const t = G / (G - gaps[own]);
  return t >= 0 && t <= 1 ? t : null;
}

function sentenceOf(
  first: string,
  second: string,
  probability: number,
  criteria: readonly DecidingCriterion[],
): string {
  const by = (sign: 1 | -1) =>
    criteria
      .filter(({ contribution }) => sign * contribution.expected > 0)
      .sort((a, b) => sign * (b.contribution.expected - a.contribution.expected))[0]?.criterion ?? null;
  const [speaksFor, speaksAgainst] = [by(1), by(-1)];
  const widest = [...criteria].sort((a, b) => b.varianceSharePercent - a.varianceSharePercent)[0];
  const reasons = [
    ...(speaksFor === null ? [] : [`${speaksFor} speaks most for it`]),
    ...(speaksAgainst === null ? [] : [`${speaksAgainst} most against it`]),
    `most of what is open lies in ${widest.criterion}`,
  ];
  return `${first} is better than ${second} in ${Math.round(100 * probability)} of 100 draws: ${reasons.join(", ")}.`;
}
