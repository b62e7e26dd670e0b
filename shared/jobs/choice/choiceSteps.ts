import { commonDraws } from "../../statistics/commonDraws";
import { drawnBand } from "../../statistics/drawnBand";
import { mean } from "../../statistics/sample";
import type { CaseSoFar, JobStep } from "../jobBlock";
import { type PuckResult, puckBlock } from "../puck/public";
import { type Acceptability, acceptability } from "./acceptability";
import { choiceCautions } from "./choiceCautions";
import type { ChoiceJob } from "./choiceJob";
import type { ChoiceCandidate, ChoiceResult } from "./choiceResult";
import { criterionCatalogue } from "./criteria";
import { criterionReader } from "./criterionDraws";
import { decisionBetween } from "./decision";
import { type PartialValues, partialValues } from "./partialValues";
import { weightDraws } from "./weightDraws";

/** From which probability on a candidate is called the choice; below it the choice is called open. */
const chosenProbability = 0.8;

const notes = [
  "Probability to be first: share of all weights allowed and all draws in which a candidate has the most value. Sources: Lahdelma, Hokkanen & Salminen (1998), Eur. J. Oper. Res. 106, 137-143; values and swings after Belton & Stewart (2002), Multiple Criteria Decision Analysis.",
  "Values grow in a straight line (of the logarithm where so said) from the worst to the best of a swing, and add up by their weights: criteria must not depend on each other.",
  "Drag: every puck keeps its own band; errors go together as far as the engine's error model finds two pucks alike, and the water is the same for all. Prices, coats, tiles, speeds, wear and the panel of players are the same for all pucks in one draw; made sizes are each puck's own.",
];

/** Reads one criterion per `next()`, then weighs them. */
export function* choiceSteps(job: ChoiceJob, before: CaseSoFar): Generator<JobStep, ChoiceResult> {
  const results = before.outcomeOf(puckBlock) ?? [];
  const pucks = job.candidates.flatMap((name) => results.filter((result) => result.name === name));
  const read = criterionReader(job, pucks);
  const drawn: Float64Array[][] = [];
  for (const criterion of job.criteria) {
    const values = read(criterion);
    if (typeof values === "string") return noChoice(job, `${criterion.name}: ${values}`);
    drawn.push(values);
    yield { done: drawn.length, label: `read ${criterion.name}` };
  }
  const result = choose(job, pucks, drawn);
  yield { done: drawn.length + 1, label: "weighed all criteria" };
  return result;
}

function noChoice({ draws, seed }: ChoiceJob, problem: string): ChoiceResult {
  const sentence = `There is no choice: ${problem}.`;
  const empty = { candidates: [], criteria: [], decides: null, notes: [] };
  return { ...empty, sentence, draws, seed, cautions: choiceCautions, problem };
}

function choose(job: ChoiceJob, pucks: readonly PuckResult[], drawn: readonly Float64Array[][]): ChoiceResult {
  const { criteria, draws, seed } = job;
  const scales = criteria.map((criterion, j) => partialValues(criterion, drawn[j]));
  const weights = weightDraws(
    criteria.map(({ swing }) => swing),
    draws,
    commonDraws({ draws, seed }),
  );
  const values = pucks.map((_, i) => scales.map((scale) => scale.values[i]));
  const found = acceptability(values, weights);
  const candidates = pucks
    .map((puck, i) => candidateOf(puck.name, i, job, drawn, scales, found, values, pucks))
    .sort((a, b) => b.probabilityFirst - a.probabilityFirst || meanRank(a) - meanRank(b));
  const [first, second] = candidates.map(({ name }) => pucks.findIndex((puck) => puck.name === name));
  const named = (i: number) => ({ name: pucks[i].name, values: values[i] });
  return {
    candidates,
    criteria: criteria.map(({ key, name, sense, target, scale }, j) => ({
      key,
      name,
      unit: unitOf(job, j),
      sense,
      target,
      scale,
      worst: scales[j].worst,
      best: scales[j].best,
      weight: drawnBand(weights[j]),
    })),
    decides: decisionBetween(
      named(first),
      named(second),
      found.pairwise[first][second],
      weights,
      criteria.map(({ name }) => name),
    ),
    sentence: sentenceOf(candidates),
    draws,
    seed,
    notes,
    cautions: choiceCautions,
    problem: null,
  };
}

function meanRank({ rankProbabilities }: ChoiceCandidate): number {
  return rankProbabilities.reduce((sum, share, rank) => sum + share * rank, 0);
}

function unitOf({ criteria, cost }: ChoiceJob, j: number): string {
  const { key } = criteria[j];
  return key === "cost" ? (cost?.currency ?? "") : criterionCatalogue[key].unit;
}

function candidateOf(
  name: string,
  i: number,
  job: ChoiceJob,
  drawn: readonly Float64Array[][],
  scales: readonly PartialValues[],
  found: Acceptability,
  values: readonly (readonly Float64Array[])[],
  pucks: readonly PuckResult[],
): ChoiceCandidate {
  const winning = found.winningWeights[i];
  return {
    name,
    probabilityFirst: found.rankShares[i][0],
    rankProbabilities: found.rankShares[i],
    winningWeights: winning[0].length === 0 ? null : winning.map((column) => drawnBand(column)),
    confidence: found.confidence[i],
    dominatedBy: pucks.flatMap((other, j) =>
      j !== i && dominates(values[j], values[i])
        ? [{ name: other.name, probability: dominance(values[j], values[i]) }]
        : [],
    ),
    criteria: job.criteria.map((criterion, j) => ({
      criterion: criterion.name,
      unit: unitOf(job, j),
      ...drawnBand(drawn[j][i]),
      value: drawnBand(scales[j].values[i]),
    })),
  };
}

/** Whether one is at least as good in every criterion by the means, and better in one. */
export function dominates(one: readonly Float64Array[], other: readonly Float64Array[]): boolean {
  const gaps = one.map((column, j) => mean(column) - mean(other[j]));
  return gaps.every((gap) => gap >= 0) && gaps.some((gap) => gap > 0);
}

/** Share of draws in which one is at least as good in every criterion. */
function dominance(one: readonly Float64Array[], other: readonly Float64Array[]): number {
  const draws = one[0].length;
  let count = 0;
  for (let k = 0; k < draws; k++) if (one.every((column, j) => column[k] >= other[j][k])) count++;
  return count / draws;
}

function sentenceOf([first, second]: readonly ChoiceCandidate[]): string {
  const share = ({ probabilityFirst }: ChoiceCandidate) => `${Math.round(100 * probabilityFirst)} of 100`;
  return first.probabilityFirst >= chosenProbability
    ? `${first.name} is first in ${share(first)} of all weights and draws.`
    : `The choice is open: ${first.name} is first in ${share(first)} of all weights and draws, ${second.name} in ${share(second)}.`;
}
