import { problem, type Result, success } from "../../result";
import { type RandomDraws, resumedDraws } from "../../statistics/randomDraws";
import { shuffledOrder } from "../../statistics/shuffle";
import type { DesignSpace, Evaluation } from "./designSpace";
import { crowdingDistances, nondominatedLayers, paretoFront } from "./paretoFront";
import { openPoints, type PointRun, recordPoint, startRun } from "./pointRun";
import { latinHypercube } from "./samplePlans";

/**
 * Search for the Pareto front by the elitist nondominated-sorting genetic algorithm of Deb, Pratap, Agarwal & Meyarivan
 * (2002), IEEE Trans. Evol. Comput. 6, 182-197. The state is plain data: evaluate its open points anywhere, record the
 * answers, advance when none is open. Save it at any time and go on later with the same result.
 */
export interface GeneticSearch {
  readonly settings: GeneticSettings;
  readonly generation: number;
  /** The expected so far, shape [populationSize] after the first generation. */
  readonly population: readonly Evaluation[];
  /**
   * The expected of every point ever evaluated: the answer. The population alone gives up converged members to spread out.
   * At most four times the population, the least crowded kept.
   */
  readonly front: readonly Evaluation[];
  /** The points under evaluation. */
  readonly offspring: PointRun;
  /** State of the random numbers. */
  readonly random: readonly number[];
}

export interface GeneticSettings {
  /** Even, 4 to 2000. */
  readonly populationSize: number;
  /** Whole number. */
  readonly seed: number;
}

/** Probability of crossing two parents, and the indices of both distributions: the values of Deb et al. (2002), IV. */
const crossoverProbability = 0.9;
const crossoverIndex = 20;
const mutationIndex = 20;

export function startGeneticSearch(space: DesignSpace, settings: GeneticSettings): Result<GeneticSearch> {
  const { populationSize, seed } = settings;
  if (
    !(Number.isInteger(populationSize) && populationSize % 2 === 0 && populationSize >= 4 && populationSize <= 2000)
  ) {
    return problem("tradeoff", `population is ${populationSize}; it must be even, from 4 to 2000`, "populationSize");
  }
  const points = latinHypercube(space, populationSize, seed);
  if (!points.ok) return points;
  // The hypercube took its numbers from the same seed: the search itself starts from another stream.
  const random = [seed | 0, ~seed | 0, (seed * 2654435761) | 0, 0x5bd1e995];
  return success({
    settings,
    generation: 0,
    population: [],
    front: [],
    offspring: startRun(space, points.value),
    random,
  });
}

/** The search with one answer more. */
export function recordOffspring(search: GeneticSearch, index: number, evaluation: Evaluation): GeneticSearch {
  return { ...search, offspring: recordPoint(search.offspring, index, evaluation) };
}

/** Survivors of parents and offspring, and the next offspring. Throws while points are still open. */
export function advanceGeneration(search: GeneticSearch): GeneticSearch {
  const [open] = openPoints(search.offspring, 1);
  if (open !== undefined) throw new RangeError(`point ${open.index} of the generation is not evaluated yet.`);
  const { space } = search.offspring;
  const done = search.offspring.evaluations.filter((evaluation) => evaluation !== null);
  const ranked = survivors([...search.population, ...done], space, search.settings.populationSize);
  const draws = resumedDraws(search.random);
  const points = breed(ranked, space, search.settings.populationSize, draws);
  return {
    settings: search.settings,
    generation: search.generation + 1,
    population: ranked.map(({ evaluation }) => evaluation),
    front: bestEver([...search.front, ...done], space, 4 * search.settings.populationSize),
    offspring: startRun(space, points),
    random: draws.state(),
  };
}

function bestEver(all: readonly Evaluation[], space: DesignSpace, most: number): Evaluation[] {
  const front = paretoFront(all, space.goals);
  if (front.length <= most) return front;
  const crowding = crowdingDistances(front, space.goals.length);
  const order = front.map((_, i) => i).sort((a, b) => compareCrowding(crowding[b], crowding[a]));
  const kept = new Set(order.slice(0, most));
  return front.filter((_, i) => kept.has(i));
}

interface Ranked {
  readonly evaluation: Evaluation;
  readonly layer: number;
  readonly crowding: number;
}

function survivors(all: readonly Evaluation[], space: DesignSpace, count: number): Ranked[] {
  const kept: Ranked[] = [];
  nondominatedLayers(all, space.goals).forEach((indices, layer) => {
    if (kept.length >= count) return;
    const members = indices.map((i) => all[i]);
    const distances = crowdingDistances(members, space.goals.length);
    const ranked = members.map((evaluation, i) => ({ evaluation, layer, crowding: distances[i] }));
    if (kept.length + ranked.length > count) ranked.sort((a, b) => compareCrowding(b.crowding, a.crowding));
    kept.push(...ranked.slice(0, count - kept.length));
  });
  return kept;
}

/** Difference that is 0 for two infinities. */
function compareCrowding(a: number, b: number): number {
  return a === b ? 0 : a - b;
}

function breed(parents: readonly Ranked[], space: DesignSpace, count: number, draws: RandomDraws): number[][] {
  const children: number[][] = [];
  while (children.length < count) {
    // Two shuffles give every parent two tournaments, as in the paper.
    const first = shuffledOrder(draws, parents.length);
    const second = shuffledOrder(draws, parents.length);
    const pool = [...pairWinners(parents, first), ...pairWinners(parents, second)];
    for (let i = 0; i + 1 < pool.length && children.length < count; i += 2) {
      const pair = crossover(pool[i].evaluation.variables, pool[i + 1].evaluation.variables, space, draws);
      children.push(...pair.map((child) => mutate(child, space, draws)));
    }
  }
  return children.slice(0, count);
}

function pairWinners(parents: readonly Ranked[], order: readonly number[]): Ranked[] {
  const winners: Ranked[] = [];
  for (let i = 0; i + 1 < order.length; i += 2) {
    const [a, b] = [parents[order[i]], parents[order[i + 1]]];
    winners.push(a.layer < b.layer || (a.layer === b.layer && a.crowding >= b.crowding) ? a : b);
  }
  return winners;
}

/** Simulated binary crossover inside bounds. Source: Deb & Agrawal (1995), Complex Systems 9, 115-148. */
function crossover(a: readonly number[], b: readonly number[], space: DesignSpace, draws: RandomDraws): number[][] {
  const children = [[...a], [...b]];
  if (draws.uniform() > crossoverProbability) return children;
  space.variables.forEach(({ lowest, highest }, i) => {
    if (draws.uniform() > 0.5 || Math.abs(a[i] - b[i]) < 1e-14 * (highest - lowest)) return;
    const low = Math.min(a[i], b[i]);
    const high = Math.max(a[i], b[i]);
    const u = draws.uniform();
    const spread = (room: number) => {
      const beta = 1 + (2 * room) / (high - low);
      const alpha = 2 - beta ** -(crossoverIndex + 1);
      const power = 1 / (crossoverIndex + 1);
      return u <= 1 / alpha ? (u * alpha) ** power : (1 / (2 - u * alpha)) ** power;
    };
    const c1 = (low + high - spread(low - lowest) * (high - low)) / 2;
    const c2 = (low + high + spread(highest - high) * (high - low)) / 2;
    const isSwapped = draws.uniform() < 0.5;
    children[0][i] = clamp(isSwapped ? c2 : c1, lowest, highest);
    children[1][i] = clamp(isSwapped ? c1 : c2, lowest, highest);
  });
  return children;
}

/** Polynomial mutation inside bounds, on average of one variable. Source: Deb & Goyal (1996), as in Deb et al. (2002). */
function mutate(child: readonly number[], space: DesignSpace, draws: RandomDraws): number[] {
  return child.map((value, i) => {
    if (draws.uniform() > 1 / child.length) return value;
    const { lowest, highest } = space.variables[i];
    const range = highest - lowest;
    const u = draws.uniform();
    const power = 1 / (mutationIndex + 1);
    const shift =
      u < 0.5
        ? (2 * u + (1 - 2 * u) * (1 - (value - lowest) / range) ** (mutationIndex + 1)) ** power - 1
        : 1 - (2 * (1 - u) + 2 * (u - 0.5) * (1 - (highest - value) / range) ** (mutationIndex + 1)) ** power;
    return clamp(value + shift * range, lowest, highest);
  });
}

function clamp(value: number, lowest: number, highest: number): number {
  return Math.min(highest, Math.max(lowest, value));
}
