import type { RandomDraws } from "../../statistics/randomDraws";
import { mean } from "../../statistics/sample";
import { type BlockScores, blockRows, completeBlocks } from "./blockScores";
import { familyP } from "./claimFamily";
import { rankingConclusions } from "./conclusions";
import { exactFriedmanP } from "./exactFriedman";
import { friedmanTest } from "./friedman";
import { pairComparisons } from "./pairComparisons";
import { permutedBlocksP } from "./permutedBlocks";
import { type PlayerPairs, standings } from "./scoreMatrix";
import { skillingsMackDesign, skillingsMackTest } from "./skillingsMack";
import { type StrengthBand, strengthBands } from "./strengthBands";
import type { TrialAnalysis } from "./trialCase";
import type { BlockTestResult, PairResult, PuckStanding, RankingResult } from "./trialResult";

/** What a ranking is made of. */
export interface RankingData {
  /** null for the overall ranking. */
  readonly activity: string | null;
  /** Larger is better, one block per player. */
  readonly liking: BlockScores;
  /** One per player. */
  readonly pairs: readonly PlayerPairs[];
  /** Median score of each puck in scale units; null overall. */
  readonly medians: readonly (number | null)[] | null;
  readonly codes: readonly string[];
  /** Rankings of the trial, this one included: they share the significance level. */
  readonly rankings: number;
}

/** Ranks the pucks of one activity, or of all: test, strengths with bands, pairs, and what they show. */
export function rankPucks(data: RankingData, analysis: TrialAnalysis, draws: RandomDraws): RankingResult {
  const { liking, codes } = data;
  const rows = blockRows(liking);
  const taking = rows.flatMap((row, i) => (row.filter((score) => !Number.isNaN(score)).length >= 2 ? [i] : []));
  const complete = completeBlocks(liking);
  const missingCells = liking.scores.filter(Number.isNaN).length;
  const tested = testOf(data, missingCells === 0, analysis.permutations, draws);
  const test = typeof tested === "string" ? null : tested;
  const friedman = complete.blockCount >= 2 ? friedmanTest(complete) : null;
  const bands =
    taking.length === 0
      ? null
      : strengthBands(
          taking.map((i) => data.pairs[i]),
          analysis.bootstrapSamples,
          analysis.bandCoverage,
          draws,
        );
  const bandList = bands?.ok === true ? bands.value.bands : null;
  const ranked = codes.map((code, j) => standing(data, code, j, rows, bandList?.[j] ?? null));
  ranked.sort((a, b) => (b.strength ?? 0) - (a.strength ?? 0) || (a.meanRank ?? 0) - (b.meanRank ?? 0));
  const order = ranked.map(({ code }) => code);
  const pairs = pairComparisons(liking)
    .map((pair): PairResult => {
      const { better, worse, ...counts } = pair;
      const own = familyP(pair.holmP, data.rankings, test?.familyP ?? 1);
      const isShown = own <= analysis.significanceLevel;
      return {
        better: codes[better],
        worse: codes[worse],
        ...counts,
        familyP: own,
        smallestFamilyP: familyP(pair.smallestHolmP, data.rankings),
        isShown,
      };
    })
    .sort(
      (a, b) => order.indexOf(a.better) - order.indexOf(b.better) || order.indexOf(a.worse) - order.indexOf(b.worse),
    );
  return {
    activity: data.activity,
    players: taking.length,
    completePlayers: complete.blockCount,
    missingCells,
    test,
    kendallW: friedman?.ok === true ? friedman.value.kendallW : null,
    standings: ranked,
    tieParameter: bands?.ok === true ? bands.value.tieParameter : null,
    pairs,
    conclusions: rankingConclusions(
      data.activity ?? "Overall",
      taking.length,
      test,
      ranked,
      pairs,
      analysis.significanceLevel,
      data.rankings,
    ),
    problem: typeof tested === "string" ? tested : null,
  };
}

/** The test, or why there is none. */
function testOf(
  { liking, rankings }: RankingData,
  isComplete: boolean,
  permutations: number,
  draws: RandomDraws,
): BlockTestResult | string {
  const design = skillingsMackDesign(liking);
  if (!design.ok) return design.problem.message;
  const friedman = isComplete ? friedmanTest(liking) : null;
  if (friedman?.ok === false) return friedman.problem.message;
  const exact = isComplete ? exactFriedmanP(liking) : null;
  const { adjustedRanks, treatmentCount, statistic } = design.value;
  if (!adjustedRanks.some((rank) => Math.abs(rank) > 1e-9)) {
    return "every player scored all pucks alike; there is nothing to rank";
  }
  const permuted =
    exact === null ? permutedBlocksP(adjustedRanks, treatmentCount, statistic, permutations, draws) : null;
  const pValue = exact ?? permuted?.pValue ?? 1;
  const p = {
    pValue,
    familyP: familyP(pValue, rankings),
    pMethod: exact === null ? ("permuted" as const) : ("exact" as const),
    permutations: permuted?.permutations ?? null,
    standardError: permuted?.standardError ?? null,
  };
  if (friedman !== null) {
    const { statistic: chiSquare, degreesOfFreedom, chiSquareP, fP } = friedman.value;
    return { name: "Friedman", statistic: chiSquare, degreesOfFreedom, chiSquareP, fP, ...p };
  }
  const test = skillingsMackTest(liking);
  if (!test.ok) return test.problem.message;
  const { statistic: chiSquare, degreesOfFreedom, chiSquareP } = test.value;
  return { name: "Skillings-Mack", statistic: chiSquare, degreesOfFreedom, chiSquareP, fP: null, ...p };
}

function standing(
  { medians, liking }: RankingData,
  code: string,
  j: number,
  rows: readonly (readonly number[])[],
  band: StrengthBand | null,
): PuckStanding {
  const own = rows.map((row) => standings(row)[j]).filter((each) => !Number.isNaN(each));
  return {
    code,
    scored: rows.filter((row) => !Number.isNaN(row[j])).length,
    meanRank: own.length === 0 ? null : 1 + ((1 - mean(own)) * (liking.treatmentCount - 1)) / 2,
    medianScore: medians?.[j] ?? null,
    strength: band?.strength ?? null,
    strengthLow: band?.low ?? null,
    strengthHigh: band?.high ?? null,
    firstShare: band?.firstShare ?? null,
  };
}
