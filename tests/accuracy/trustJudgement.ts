import { mean, rootMeanSquare } from "simple-statistics";
import { compareDraws } from "../../shared/engine/trust/compareDraws";
import type { ErrorParameters } from "../../shared/engine/trust/errorCovariance";
import { knowledgeOf } from "../../shared/engine/trust/errorKnowledge";
import type { LevelDatum } from "../../shared/engine/trust/levelProcess";
import { type StudyBody, studyDraws } from "../../shared/engine/trust/studyDraws";
import { normalQuantile } from "../../shared/statistics/normal";
import { meanExponential, mixtureQuantile, mixtureScore } from "../../shared/statistics/normalMixture";
import type { PublishedSource, PublishedValue } from "../published/publishedValue";
import type { Quantity } from "../published/quantity";
import type { BandPoint, CrisisError } from "./bandPoints";
import { statedBand } from "./coverage";
import { fitBands } from "./fitBands";
import { groupBy } from "./groupBy";
import { ninetyPercent } from "./leaveOneSourceOut";
import { rankedPairs } from "./rankedPairs";
import { sectionDrags } from "./sectionDrags";
import type { TrustPoint } from "./trustPoints";
import { dragMixture, leftOutLevels, measurementMixture, withoutExperiment } from "./trustScore";

/** How bands hold what experiments that were left out measured. */
export interface BandFigures {
  readonly name: string;
  readonly count: number;
  readonly covered: number;
  /** Median full width over the middle, of the band of a measurement and of the drag itself. */
  readonly measurementWidth: number;
  readonly dragWidth: number;
  /** Mean continuous ranked probability score of ln Cd. */
  readonly score: number;
  /** The same three of the bands of half-widths, fitted without the experiment too. */
  readonly bandsCovered: number;
  readonly bandsWidth: number;
  readonly bandsScore: number;
}

/** Pairs by the probability that was given to the more likely order. */
export interface ReliabilityBin {
  readonly from: number;
  readonly to: number;
  readonly pairs: number;
  readonly meanProbability: number;
  readonly right: number;
}

export interface TrustJudgement {
  readonly bands: readonly BandFigures[];
  readonly reliability: readonly ReliabilityBin[];
  readonly pairs: number;
  readonly decided: number;
  readonly decidedRight: number;
  /** Root mean square of ln(measured / expected drag) over all points. */
  readonly rmsExpected: number;
  /** Expected drag in the source's tunnel of every judged quantity, its experiment left out. */
  readonly expected: ReadonlyMap<Quantity, number>;
}

/** Draws of every pair. */
const pairDraws = 400;
/** Edges of the bins of probability. */
const probabilityEdges = [0.5, 0.6, 0.7, 0.8, 0.9, 1] as const;

export function judgeTrust(
  sources: readonly PublishedSource[],
  points: readonly TrustPoint[],
  data: readonly LevelDatum[],
  crises: readonly CrisisError[],
  parameters: ErrorParameters,
): TrustJudgement {
  const levels = leftOutLevels(points, data, parameters);
  const older = bandsWithout(points, crises);
  const judged = points.map((point) => {
    const level = levels.get(point)!;
    const drag = dragMixture(point, level, parameters);
    const measured = measurementMixture(point, level, parameters);
    const [low, middle, high] = [0.05, 0.5, 0.95].map((share) => mixtureQuantile(measured, share));
    const band = older.get(point)!;
    return {
      point,
      covered: point.logMeasured >= low && point.logMeasured <= high,
      measurementWidth: (Math.exp(high) - Math.exp(low)) / Math.exp(middle),
      dragWidth: (Math.exp(mixtureQuantile(drag, 0.95)) - Math.exp(mixtureQuantile(drag, 0.05))) / Math.exp(middle),
      score: mixtureScore(measured, point.logMeasured),
      expected: meanExponential(drag),
      ...band,
    };
  });
  const named: [string, typeof judged][] = [
    ["all", judged],
    ...groupBy(judged, ({ point }) => point.group),
    ...groupBy(judged, ({ point }) => `${point.group}, ${point.band.state.regime}`),
    ["all, subcritical", judged.filter(({ point }) => point.band.state.regime === "subcritical")],
  ];
  const pairs = pairProbabilities(sources, points, data, parameters);
  const sure = pairs.filter(({ probability }) => probability >= 0.9);
  return {
    bands: named
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([name, members]) => ({
        name,
        count: members.length,
        covered: members.filter(({ covered }) => covered).length,
        measurementWidth: median(members.map(({ measurementWidth }) => measurementWidth)),
        dragWidth: median(members.map(({ dragWidth }) => dragWidth)),
        score: mean(members.map(({ score }) => score)),
        bandsCovered: members.filter(({ bandsCovered }) => bandsCovered).length,
        bandsWidth: median(members.map(({ bandsWidth }) => bandsWidth)),
        bandsScore: mean(members.map(({ bandsScore }) => bandsScore)),
      })),
    reliability: probabilityEdges.slice(1).map((to, i) => {
      const from = probabilityEdges[i];
      const own = pairs.filter(({ probability }) => probability >= from && (probability < to || to === 1));
      return {
        from,
        to,
        pairs: own.length,
        meanProbability: own.length === 0 ? Number.NaN : mean(own.map(({ probability }) => probability)),
        right: own.filter(({ right }) => right).length,
      };
    }),
    pairs: pairs.length,
    decided: sure.length,
    decidedRight: sure.filter(({ right }) => right).length,
    rmsExpected: rootMeanSquare(judged.map(({ expected, point }) => Math.log(expected) - point.logMeasured)),
    expected: new Map(
      judged.map(({ point, expected }) => [point.band.value.quantity, expected / point.freeStreamFactor]),
    ),
  };
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1];
}

/** The bands of half-widths, fitted without the experiment of each point. */
function bandsWithout(points: readonly TrustPoint[], crises: readonly CrisisError[]) {
  const all = points.map(({ band }): BandPoint => ({ ...band, half: "fit" }));
  const judged = new Map<TrustPoint, { bandsCovered: boolean; bandsWidth: number; bandsScore: number }>();
  for (const [experiment, members] of groupBy(points, ({ experiment }) => experiment)) {
    const names = new Set(members.map(({ band }) => band.source));
    const table = fitBands(
      all.filter((point) => point.experiment !== experiment),
      crises.filter(({ source }) => !names.has(source)).map((crisis) => ({ ...crisis, half: "fit" as const })),
    );
    for (const point of members) {
      const { low, high } = statedBand(point.band, table);
      const middle = point.band.state.dragCoefficient;
      const measured = Math.exp(point.logMeasured);
      judged.set(point, {
        bandsCovered: measured >= low && measured <= high,
        bandsWidth: (high - low) / middle,
        bandsScore: twoSidedScore(
          Math.log(Math.max(low, leastShare * middle)),
          Math.log(middle),
          Math.log(high),
          point.logMeasured,
        ),
      });
    }
  }
  return judged;
}

/** A band that reaches down to nothing is taken to end at this part of its middle, where a logarithm is asked for. */
const leastShare = 0.05;
/** Quantiles that stand for a distribution in a score. */
const scoreSteps = 400;

const standardQuantiles = Array.from({ length: scoreSteps }, (_, i) => normalQuantile((i + 0.5) / scoreSteps));

/** Score of a band taken as two halves of normal distributions, by its quantiles (Gneiting & Raftery 2007, sec. 4.2). */
function twoSidedScore(low: number, middle: number, high: number, came: number): number {
  let sum = 0;
  for (let i = 0; i < scoreSteps; i++) {
    const share = (i + 0.5) / scoreSteps;
    const z = standardQuantiles[i];
    const quantile = middle + (z / ninetyPercent) * (z < 0 ? middle - low : high - middle);
    sum += (came < quantile ? 1 - share : -share) * (quantile - came);
  }
  return (2 * sum) / scoreSteps;
}

/** The probability of the more likely order of every ranked pair, its experiment left out, and whether it is right. */
function pairProbabilities(
  sources: readonly PublishedSource[],
  points: readonly TrustPoint[],
  data: readonly LevelDatum[],
  parameters: ErrorParameters,
): { readonly probability: number; readonly right: boolean }[] {
  const byValue = new Map<PublishedValue, TrustPoint>(points.map((point) => [point.band.value, point]));
  const pairs = rankedPairs(sectionDrags(sources, () => 1));
  return [...groupBy(pairs, ({ first }) => first.experiment)].flatMap(([experiment, members]) => {
    const level = knowledgeOf(withoutExperiment(data, experiment, parameters));
    return members.flatMap(({ first, second }, i) => {
      const bodies = [first, second].map(({ value }) => byValue.get(value));
      if (bodies[0] === undefined || bodies[1] === undefined) return [];
      const { logDrag } = studyDraws(level, [studyBody(bodies[0]), studyBody(bodies[1])], pairDraws, i);
      const { probabilityLess } = compareDraws(logDrag[0], logDrag[1]);
      const less = probabilityLess > 0.5;
      return [
        {
          probability: Math.max(probabilityLess, 1 - probabilityLess),
          right: less === first.published < second.published,
        },
      ];
    });
  });
}

function studyBody({ section, condition, knots }: TrustPoint): StudyBody {
  return { streams: [{ section, condition, knots }] };
}
