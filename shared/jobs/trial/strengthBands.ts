import type { Result } from "../../result";
import { success } from "../../result";
import { normalDistribution } from "../../statistics/normal";
import type { RandomDraws } from "../../statistics/randomDraws";
import { quantileOfSorted } from "../../statistics/sample";
import { coverageFactor } from "../../statistics/studentT";
import { pairStrengths } from "./pairStrengths";
import { noPairs, type PlayerPairs } from "./scoreMatrix";

/** Wins and losses of every puck against one of average strength, added so that no strength is endless. */
export const pseudoComparisons = 0.5;

export interface StrengthBand {
  /** Share of the sum of all strengths, 0 to 1. */
  readonly strength: number;
  readonly low: number;
  readonly high: number;
  /** Share of the resampled panels in which the puck is the strongest (shared first places counted in part). */
  readonly firstShare: number;
}

export interface StrengthBands {
  readonly bands: readonly StrengthBand[];
  readonly tieParameter: number;
  readonly samples: number;
  readonly coverage: number;
}

/**
 * Share of panels to leave out at each end of a band. Panels drawn from n players are by a factor sqrt((n - 1) / n) too
 * much alike, and take the spread of those n for that of all: so many standard deviations to each side as Student's t
 * needs, widened by that factor, hold the coverage where a mean is estimated. Source: Hesterberg (2015), Am. Stat. 69,
 * 371-386, section 5.2 (expanded percentile interval).
 */
function shareOutside(coverage: number, players: number): number {
  if (players < 2) return 0;
  const deviations = Math.sqrt(players / (players - 1)) * coverageFactor(coverage, players - 1);
  return normalDistribution(-deviations);
}

/**
 * Strengths with bands from panels of as many players drawn with replacement. Players, not scores, are drawn, since the
 * scores of one player hang together. Source: Efron & Tibshirani (1993), An Introduction to the Bootstrap, ch. 13; the
 * ends are moved out for few players as `shareOutside` says.
 * @param players  one per player
 * @param samples  1 or more
 * @param coverage above 0 and below 1
 */
export function strengthBands(
  players: readonly PlayerPairs[],
  samples: number,
  coverage: number,
  draws: RandomDraws,
): Result<StrengthBands> {
  const k = players[0].itemCount;
  const best = pairStrengths(sumOf(players), pseudoComparisons);
  if (!best.ok) return best;
  const drawn = Array.from({ length: k }, () => new Float64Array(samples));
  const first = new Float64Array(k);
  for (let sample = 0; sample < samples; sample++) {
    const panel = players.map(() => players[draws.below(players.length)]);
    const found = pairStrengths(sumOf(panel), pseudoComparisons);
    if (!found.ok) return found;
    const { strengths } = found.value;
    const most = Math.max(...strengths) * (1 - 1e-9);
    const leaders = strengths.filter((strength) => strength >= most).length;
    strengths.forEach((strength, j) => {
      drawn[j][sample] = strength;
      if (strength >= most) first[j] += 1 / leaders;
    });
  }
  const outside = shareOutside(coverage, players.length);
  return success({
    bands: best.value.strengths.map((strength, j) => {
      const sorted = drawn[j].sort();
      return {
        strength,
        low: quantileOfSorted(sorted, outside),
        high: quantileOfSorted(sorted, 1 - outside),
        firstShare: first[j] / samples,
      };
    }),
    tieParameter: best.value.tieParameter,
    samples,
    coverage,
  });
}

function sumOf(players: readonly PlayerPairs[]): PlayerPairs {
  const sum = noPairs(players[0].itemCount);
  for (const { wins, ties } of players) {
    for (let i = 0; i < wins.length; i++) {
      sum.wins[i] += wins[i];
      sum.ties[i] += ties[i];
    }
  }
  return sum;
}
