import { mean, rootMeanSquare } from "simple-statistics";
import type { Group, PublishedSource, PublishedValue } from "../published/publishedValue";
import { scatterRange } from "../published/publishedValue";
import { compareTunnels, type TunnelComparison, tunnelPoints } from "./otherTunnels";
import { type RankingFigures, rankedPairs, rankingFigures } from "./rankedPairs";
import { type AnswerOf, isInCrisis, type SectionDrag, sectionDrags, sectionGroups } from "./sectionDrags";
import { type Part, splitForConstants } from "./sourceSplit";

/** Errors of the drag coefficients of some sections, the crisis of circles left out. */
export interface LevelFigures {
  readonly group: Group | "all";
  readonly part: Part | "all" | "other groups";
  readonly count: number;
  readonly missing: number;
  readonly meanError: number;
  /** Root mean square of (engine - published) / published. */
  readonly rmsError: number;
  /** Root mean square of ln(engine / published). */
  readonly rmsLogError: number;
}

/** The figures that judge an engine on the whole of the published values. */
export interface RulerFigures {
  readonly counted: number;
  readonly answered: number;
  readonly insideScatter: number;
  readonly levels: readonly LevelFigures[];
  readonly ranking: readonly RankingFigures[];
  readonly tunnels: readonly TunnelComparison[];
}

export function rulerFigures(sources: readonly PublishedSource[], answerOf: AnswerOf): RulerFigures {
  const counted = sources.flatMap(({ values }) => values.filter(({ shownOnly }) => shownOnly === undefined));
  const drags = sectionDrags(sources, answerOf);
  const parts = splitForConstants(sources);
  const partOf = ({ value }: SectionDrag): LevelFigures["part"] => parts.get(value) ?? "other groups";
  const outside = drags.filter((drag) => !isInCrisis(drag));
  const allParts = ["fit", "held out", "design code", "other groups"] as const;
  return {
    counted: counted.length,
    answered: counted.filter(({ quantity }) => answerOf(quantity) !== null).length,
    insideScatter: counted.filter((value) => isInside(value, answerOf(value.quantity))).length,
    levels: [
      levelFigures("all", "all", outside),
      ...allParts.map((part) =>
        levelFigures(
          "all",
          part,
          outside.filter((drag) => partOf(drag) === part),
        ),
      ),
      ...sectionGroups.map((group) =>
        levelFigures(
          group,
          "all",
          outside.filter(({ value }) => value.group === group),
        ),
      ),
    ].filter(({ count }) => count > 0),
    ranking: rankingFigures(rankedPairs(drags)),
    tunnels: compareTunnels(tunnelPoints(sources), answerOf),
  };
}

function isInside(value: PublishedValue, predicted: number | null): boolean {
  if (predicted === null) return false;
  const [low, high] = scatterRange(value);
  return predicted >= low && predicted <= high;
}

function levelFigures(
  group: LevelFigures["group"],
  part: LevelFigures["part"],
  drags: readonly SectionDrag[],
): LevelFigures {
  const answered = drags.flatMap(({ published, predicted }) => (predicted === null ? [] : [{ published, predicted }]));
  const errors = answered.map(({ published, predicted }) => predicted / published - 1);
  const logErrors = answered.map(({ published, predicted }) => Math.log(predicted / published));
  const none = errors.length === 0;
  return {
    group,
    part,
    count: drags.length,
    missing: drags.length - answered.length,
    meanError: none ? Number.NaN : mean(errors),
    rmsError: none ? Number.NaN : rootMeanSquare(errors),
    rmsLogError: none ? Number.NaN : rootMeanSquare(logErrors),
  };
}
