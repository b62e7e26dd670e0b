import { sharedRanks } from "../../statistics/ranks";
import { type BlockScores, blockRows } from "./blockScores";
import type { PairCounts } from "./pairStrengths";
import type { TrialScore, TrialSetup } from "./trialSetup";

/** Liking of a player: larger is better whatever the scale says, the mean of repeats, NaN where nothing was scored. */
export function activityScores(setup: TrialSetup, scores: readonly TrialScore[], activity: number): BlockScores {
  const { players, pucks, scale } = setup;
  const sums = new Float64Array(players.length * pucks.length);
  const counts = new Float64Array(sums.length);
  for (const { player, puck, score, ...one } of scores) {
    if (one.activity !== activity || score === null) continue;
    const cell = player * pucks.length + puck;
    sums[cell] += scale.isHigherBetter ? score : -score;
    counts[cell]++;
  }
  const mean = sums.map((sum, cell) => (counts[cell] > 0 ? sum / counts[cell] : Number.NaN));
  return { blockCount: players.length, treatmentCount: pucks.length, scores: mean };
}

/**
 * Liking over all activities: the weighted mean of each player's standing of a puck at the activities where the player
 * scored it. A standing is the rank within the player's activity put on -1 (last) to 1 (first), ties sharing: ordinal
 * scores are compared within one player and activity only.
 */
export function overallScores(byActivity: readonly BlockScores[], weights: readonly number[]): BlockScores {
  const [first] = byActivity;
  const sums = new Float64Array(first.scores.length);
  const weightSums = new Float64Array(sums.length);
  byActivity.forEach((data, activity) => {
    blockRows(data).forEach((row, player) => {
      standings(row).forEach((standing, puck) => {
        if (Number.isNaN(standing)) return;
        sums[player * data.treatmentCount + puck] += weights[activity] * standing;
        weightSums[player * data.treatmentCount + puck] += weights[activity];
      });
    });
  });
  // Rounded, so that sums in another order do not break ties.
  const mean = sums.map((sum, cell) =>
    weightSums[cell] > 0 ? Math.round((sum / weightSums[cell]) * 1e9) / 1e9 : Number.NaN,
  );
  return { blockCount: first.blockCount, treatmentCount: first.treatmentCount, scores: mean };
}

/** -1 (last) to 1 (first) by rank among the scores that are there; NaN for the others and where there is one only. */
export function standings(row: readonly number[]): number[] {
  const places = row.flatMap((score, j) => (Number.isNaN(score) ? [] : [j]));
  const found = new Array<number>(row.length).fill(Number.NaN);
  if (places.length < 2) return found;
  sharedRanks(places.map((j) => row[j])).forEach((rank, i) => {
    found[places[i]] = (2 * rank - places.length - 1) / (places.length - 1);
  });
  return found;
}

/** Paired preferences of one player at one activity, times a weight, added in place. */
export function addPairs({ itemCount: k, wins, ties }: PlayerPairs, row: readonly number[], weight: number): void {
  for (let i = 0; i < k; i++) {
    for (let j = 0; j < k; j++) {
      if (i === j) continue;
      if (row[i] > row[j]) wins[i * k + j] += weight;
      if (row[i] === row[j]) ties[i * k + j] += weight;
    }
  }
}

/** Pair counts that can be added to. */
export interface PlayerPairs extends PairCounts {
  readonly wins: Float64Array;
  readonly ties: Float64Array;
}

export function noPairs(itemCount: number): PlayerPairs {
  return {
    itemCount,
    wins: new Float64Array(itemCount * itemCount),
    ties: new Float64Array(itemCount * itemCount),
  };
}
