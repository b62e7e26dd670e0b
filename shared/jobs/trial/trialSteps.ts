import { randomDraws } from "../../statistics/randomDraws";
import type { BlockScores } from "./blockScores";
import { blockRows } from "./blockScores";
import { rankingCount } from "./claimFamily";
import { dragPreference } from "./dragPreference";
import { judgeConsistency } from "./judgeConsistency";
import { percentText } from "./numberWords";
import { orderEffectResults } from "./orderEffectResults";
import { planResult } from "./planResult";
import { powerSteps } from "./powerSteps";
import { rankPucks } from "./rankPucks";
import { activityScores, addPairs, noPairs, overallScores, type PlayerPairs } from "./scoreMatrix";
import type { TrialCase } from "./trialCase";
import { trialCautions } from "./trialCautions";
import type { DragPreference, PowerResult, RankingResult, TrialResult } from "./trialResult";
import type { TrialScore } from "./trialSetup";

/** One step of a trial done. */
export interface TrialStep {
  readonly done: number;
  readonly total: number;
  readonly label: string;
}

/** How many steps trialSteps counts. */
export function trialStepCount({ setup, scores, power }: TrialCase): number {
  const rankings = rankingCount(setup.activities.length);
  return 1 + (scores === null ? 0 : rankings + 1) + (power?.playerCounts.length ?? 0);
}

/**
 * Plans and analyses a trial, one part per `next()`. Equal cases give equal results: every part draws from a seed of its
 * own.
 * @param drags of the case's puck results by name, for pucks whose drag the trial does not give
 */
export function* trialSteps(
  theCase: TrialCase,
  drags: ReadonlyMap<string, number> = new Map(),
): Generator<TrialStep, TrialResult> {
  const { setup, scores, analysis } = theCase;
  const total = trialStepCount(theCase);
  let done = 0;
  const step = (label: string): TrialStep => ({ done: ++done, total, label });
  const plan = planResult(theCase);
  yield step("planned the trial");
  const rankings: RankingResult[] = [];
  let rest: Pick<TrialResult, "orderEffects" | "judges" | "dragPreference"> = {
    orderEffects: [],
    judges: [],
    dragPreference: null,
  };
  if (scores !== null) {
    const likings = setup.activities.map((_, activity) => activityScores(setup, scores, activity));
    for (const [activity, liking] of likings.entries()) {
      rankings.push(
        rankPucks(
          {
            activity: setup.activities[activity].name,
            liking,
            pairs: blockRows(liking).map((row) => pairsOf([row], [1])),
            medians: medians(theCase, scores, activity),
            codes: setup.pucks.map(({ code }) => code),
            rankings: rankingCount(setup.activities.length),
          },
          analysis,
          randomDraws(setup.seed + 1 + activity),
        ),
      );
      yield step(`ranked ${setup.activities[activity].name}`);
    }
    const overall = overallLiking(theCase, likings);
    if (setup.activities.length > 1) {
      rankings.push(
        rankPucks(
          {
            activity: null,
            liking: overall,
            pairs: setup.players.map((_, player) =>
              pairsOf(
                likings.map((liking) => blockRows(liking)[player]),
                setup.activities.map(({ weight }) => weight),
              ),
            ),
            medians: null,
            codes: setup.pucks.map(({ code }) => code),
            rankings: rankingCount(setup.activities.length),
          },
          analysis,
          randomDraws(setup.seed + 1001),
        ),
      );
      yield step("ranked over all activities");
    }
    rest = {
      orderEffects: orderEffectResults(theCase, scores),
      judges: judgeConsistency(overall, repeatedScores(theCase, scores)).map((one) => ({
        ...one,
        name: setup.players[one.player],
      })),
      dragPreference: dragsAgainst(theCase, rankings[rankings.length - 1], drags),
    };
    yield step("looked at order, players and drag");
  }
  let power: PowerResult | null = null;
  if (theCase.power !== null) {
    const steps = powerSteps(theCase.power, setup.seed);
    for (;;) {
      const next = steps.next();
      if (next.done === true) {
        power = next.value;
        break;
      }
      yield step(next.value);
    }
  }
  return {
    pucks: setup.pucks.map(({ code, name }) => ({ code, name: theCase.isUnblinded ? name : null })),
    isUnblinded: theCase.isUnblinded,
    players: setup.players,
    scale: setup.scale,
    plan,
    scores: scores === null ? null : scoreCounts(theCase, scores),
    rankings,
    ...rest,
    power,
    notes: scores === null ? [] : methodNotes(theCase),
    cautions: trialCautions,
  };
}

function overallLiking({ setup }: TrialCase, likings: readonly BlockScores[]): BlockScores {
  const weights = setup.activities.map(({ weight }) => weight);
  return overallScores(likings, weights);
}

/** The pairs of one player, each activity counting by its weight, all activities together as one player. */
function pairsOf(rows: readonly (readonly number[])[], weights: readonly number[]): PlayerPairs {
  const pairs = noPairs(rows[0].length);
  const sum = weights.reduce((total, weight) => total + weight, 0);
  rows.forEach((row, i) => {
    addPairs(pairs, row, weights[i] / sum);
  });
  return pairs;
}

function medians({ setup }: TrialCase, scores: readonly TrialScore[], activity: number): (number | null)[] {
  return setup.pucks.map((_, puck) => {
    const own = scores
      .flatMap((one) => (one.puck === puck && one.activity === activity && one.score !== null ? [one.score] : []))
      .sort((a, b) => a - b);
    if (own.length === 0) return null;
    return (own[Math.floor((own.length - 1) / 2)] + own[Math.ceil((own.length - 1) / 2)]) / 2;
  });
}

/** Per player, first and second scores of the same puck at the same activity. */
function repeatedScores({ setup }: TrialCase, scores: readonly TrialScore[]): [number, number][][] {
  return setup.players.map((_, player) =>
    scores.flatMap((first): [number, number][] => {
      if (first.player !== player || first.repeat !== 1 || first.score === null) return [];
      const second = scores.find(
        (one) =>
          one.player === player && one.activity === first.activity && one.puck === first.puck && one.repeat === 2,
      );
      return second === undefined || second.score === null ? [] : [[first.score, second.score]];
    }),
  );
}

function scoreCounts({ setup }: TrialCase, scores: readonly TrialScore[]) {
  const { players, pucks, activities, repeats } = setup;
  const wanted = players.length * pucks.length * activities.length * repeats;
  const scored = scores.filter(({ score }) => score !== null).length;
  return { scored, wanted, missing: wanted - scored };
}

function dragsAgainst(
  { setup, drag, isUnblinded, analysis }: TrialCase,
  ranking: RankingResult,
  known: ReadonlyMap<string, number>,
): DragPreference | null {
  const values = drag.values.map((value, j) => value ?? known.get(setup.pucks[j].name) ?? null);
  // Drags would tell which code is which puck.
  if (!isUnblinded || values.every((value) => value === null)) return null;
  return dragPreference(
    drag.meaning,
    setup.pucks.map(({ code }) => code),
    values,
    ranking,
    analysis.significanceLevel,
    randomDraws(setup.seed + 3001),
  );
}

function methodNotes({ setup, analysis, isUnblinded }: TrialCase): string[] {
  const several = setup.activities.length > 1;
  return [
    `Scores are compared within one player${several ? " and activity" : ""} only, by rank; equal scores share the mean of their ranks.`,
    "Strengths are those of Bradley and Terry with Davidson's ties: equal scores count as neither preferred. They add up to 1; half a win and half a loss against an average puck is added to each, so that one that always wins stays finite.",
    `Bands are to hold the strengths ${Math.round(100 * analysis.bandCoverage)} % of the time: from ${analysis.bootstrapSamples} panels drawn from the players with replacement, widened for the number of players. In simulated trials of 6 to 24 players bands of 90 % held 82 to 93 %, the least with few players and great differences.`,
    "Pairs: Wilcoxon's signed-rank test, exact, zeros by Pratt, with Holm's correction over the pairs of one ranking.",
    familyNote(rankingCount(setup.activities.length), analysis.significanceLevel),
    ...(several
      ? ["The overall ranking weighs each player's standing at every activity by the weights of the activities."]
      : []),
    ...(setup.repeats > 1 ? ["Repeated scores of a player are averaged before they are ranked."] : []),
    ...(isUnblinded ? [] : ["The trial is blind: names and drags are shown once it is unblinded."]),
  ];
}

function familyNote(rankings: number, level: number): string {
  const share = rankings > 1 ? `: each of the ${rankings} rankings has an even share of it` : "";
  return `That scores differ, and that one puck of a pair is liked more, are claims of one family: the chance that any of them is false is at most ${percentText(level)}${share}, and pairs are claimed only where their ranking shows a difference. Tests of order, of carry-over and of drag against liking stand alone, each at ${percentText(level)}.`;
}
