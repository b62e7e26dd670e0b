import { randomDraws } from "../../statistics/randomDraws";
import { isDifferenceShown } from "./blockDecision";
import { type BlockScores, blockRanks } from "./blockScores";
import { pairComparisons } from "./pairComparisons";
import { fillScores, type ScoreAssumption } from "./simulatedScores";

/** What a simulated trial assumes. */
export interface PowerAssumption extends ScoreAssumption {
  /** Chance that all statements of the trial together may have to hold a false one, above 0 and below 1. */
  readonly significanceLevel: number;
  /** Rankings that share the level: activities, and the overall one where there are several. */
  readonly rankings: number;
}

export interface PowerPoint {
  readonly playerCount: number;
  /** Share of simulated trials that show a difference between the pucks. */
  readonly power: number;
  /** Share of simulated trials that show the puck of the highest mean over the one of the lowest, as a pair. */
  readonly pairPower: number;
  /** Share of simulated trials whose best rank sum is the truly best puck's (shared first places counted in part). */
  readonly bestFirstShare: number;
  /** Monte Carlo standard error of the power. */
  readonly standardError: number;
}

/**
 * Power of one activity of a trial by simulation: each simulated panel is judged as the analysis will judge the real one,
 * by the same permutation test and the same pairs at the same level of the family of claims (`claimFamily.ts`).
 * @param simulations trials per number of players, 1 or more
 */
export function simulatedPower(
  assumption: PowerAssumption,
  playerCount: number,
  simulations: number,
  seed: number,
): PowerPoint {
  const { means, spread, significanceLevel, rankings } = assumption;
  const k = means.length;
  if (!(k >= 2)) throw new RangeError(`means are ${k}; there must be 2 or more.`);
  if (!(playerCount >= 2)) throw new RangeError(`players are ${playerCount}; they must be 2 or more.`);
  if (!(spread > 0)) throw new RangeError(`spread is ${spread}; it must be above 0.`);
  const draws = randomDraws(seed);
  const level = significanceLevel / rankings;
  const best = means.indexOf(Math.max(...means));
  const worst = means.indexOf(Math.min(...means));
  const scores = new Float64Array(playerCount * k);
  const panel: BlockScores = { blockCount: playerCount, treatmentCount: k, scores };
  let shown = 0;
  let pairShown = 0;
  let bestFirst = 0;
  for (let m = 0; m < simulations; m++) {
    fillScores(scores, assumption, draws);
    bestFirst += firstPlace(panel, best);
    if (!isDifferenceShown(panel, level, draws)) continue;
    shown++;
    const pair = pairComparisons(panel).find((one) => one.better === best && one.worse === worst);
    if (pair !== undefined && pair.holmP <= level) pairShown++;
  }
  const power = shown / simulations;
  return {
    playerCount,
    power,
    pairPower: pairShown / simulations,
    bestFirstShare: bestFirst / simulations,
    standardError: Math.sqrt(Math.max(power * (1 - power), 0.25 / simulations) / simulations),
  };
}

/** The part of the first place that a puck has by the sums of its ranks: shared places count in part. */
function firstPlace(panel: BlockScores, puck: number): number {
  const { treatmentCount: k } = panel;
  const sums = new Float64Array(k);
  blockRanks(panel).forEach((rank, i) => {
    sums[i % k] += rank;
  });
  const least = Math.min(...sums) + 1e-9;
  return sums[puck] <= least ? 1 / sums.filter((sum) => sum <= least).length : 0;
}

/** The fewest players of a curve from which on the power stays at or above what is wanted; null when none. */
export function fewestPlayers(curve: readonly PowerPoint[], wantedPower: number): number | null {
  const rising = [...curve].sort((a, b) => a.playerCount - b.playerCount);
  let fewest: number | null = null;
  for (const { playerCount, power } of rising) {
    if (power < wantedPower) fewest = null;
    else fewest ??= playerCount;
  }
  return fewest;
}
