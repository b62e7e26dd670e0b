import { type Result, success } from "../../result";
import type { TradeoffDocument } from "../puck/public";
import type { DesignSpace, Evaluation } from "./designSpace";
import { advanceGeneration, type GeneticSearch, recordOffspring, startGeneticSearch } from "./geneticSearch";
import { crowdingDistances, paretoFront } from "./paretoFront";
import { type OpenPoint, openPoints, type PointRun, recordPoint, startRun } from "./pointRun";
import { gridPoints, latinHypercube } from "./samplePlans";

/** A trade-off under way: plain data to save at any time and to go on from later, with the same result. */
export type TradeoffRun =
  | { readonly kind: "points"; readonly points: PointRun }
  | { readonly kind: "paretoSearch"; readonly generations: number; readonly search: GeneticSearch };

const standardLevels = 3;

export function startTradeoff({ method, variables }: TradeoffDocument, space: DesignSpace): Result<TradeoffRun> {
  switch (method.kind) {
    case "sweep":
      return pointsRun(
        gridPoints(
          space,
          variables.map(({ levels }) => levels ?? standardLevels),
        ),
        space,
      );
    case "latinHypercube":
      return pointsRun(latinHypercube(space, method.points, method.seed), space);
    case "paretoSearch": {
      const search = startGeneticSearch(space, { populationSize: method.populationSize, seed: method.seed });
      return search.ok
        ? success({ kind: "paretoSearch", generations: method.generations, search: search.value })
        : search;
    }
  }
}

function pointsRun(points: Result<number[][]>, space: DesignSpace): Result<TradeoffRun> {
  return points.ok ? success({ kind: "points", points: startRun(space, points.value) }) : points;
}

/** The next points to evaluate, at most `count`; none while others of this generation are still out, or at the end. */
export function nextPoints(run: TradeoffRun, count: number, handedOut: ReadonlySet<number>): OpenPoint[] {
  return openPoints(run.kind === "points" ? run.points : run.search.offspring, count, handedOut);
}

/** The run with one answer more; a generation whose last answer this is makes way for the next. */
export function recordAnswer(run: TradeoffRun, index: number, evaluation: Evaluation): TradeoffRun {
  if (run.kind === "points") return { ...run, points: recordPoint(run.points, index, evaluation) };
  const search = recordOffspring(run.search, index, evaluation);
  const isLast = openPoints(search.offspring, 1).length === 0;
  return { ...run, search: isLast ? advanceGeneration(search) : search };
}

export function isFinished(run: TradeoffRun): boolean {
  if (run.kind === "points") return openPoints(run.points, 1).length === 0;
  return run.search.generation >= run.generations;
}

export function runCounts(run: TradeoffRun): { readonly done: number; readonly total: number } {
  const answered = ({ evaluations }: PointRun) => evaluations.filter((evaluation) => evaluation !== null).length;
  if (run.kind === "points") return { done: answered(run.points), total: run.points.points.length };
  const { populationSize } = run.search.settings;
  const total = run.generations * populationSize;
  return { done: Math.min(total, run.search.generation * populationSize + answered(run.search.offspring)), total };
}

/** The allowed points that none beats. */
export function frontOf(run: TradeoffRun): readonly Evaluation[] {
  if (run.kind === "paretoSearch") return run.search.front;
  const done = run.points.evaluations.filter((evaluation) => evaluation !== null);
  return paretoFront(done, run.points.space.goals);
}

/** Of the front at most `most` members: the best in each goal first, then the least crowded; in the front's order. */
export function spreadMembers(front: readonly Evaluation[], goals: DesignSpace["goals"], most: number): Evaluation[] {
  if (front.length <= most) return [...front];
  const crowding = crowdingDistances(front, goals.length);
  const best = goals.map(({ sense }, k) =>
    front.reduce((found, { goals: values }, i) => {
      const gain = sense === "least" ? front[found].goals[k] - values[k] : values[k] - front[found].goals[k];
      return gain > 0 ? i : found;
    }, 0),
  );
  const rest = front.map((_, i) => i).sort((a, b) => (crowding[a] === crowding[b] ? a - b : crowding[b] - crowding[a]));
  const chosen = new Set([...new Set([...best, ...rest])].slice(0, most));
  return front.filter((_, i) => chosen.has(i));
}
