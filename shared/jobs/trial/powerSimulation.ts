import { type RandomDraws, randomDraws } from "../../statistics/randomDraws";
import { friedmanTest } from "./friedman";
import type { ScoreScale } from "./trialSetup";

/** What a simulated trial assumes. */
export interface PowerAssumption {
  /** Mean liking of each puck in score units, before it is rounded to the scale; the best one highest. */
  readonly means: readonly number[];
  /** Standard deviation of a player's score about a puck's mean and the player's own level, score units, above 0. */
  readonly spread: number;
  /** Standard deviation of the players' own levels, score units, 0 or more: some give high scores, some low. */
  readonly playerSpread: number;
  readonly scale: Pick<ScoreScale, "lowest" | "highest" | "step">;
  /** p below which a difference counts as shown, above 0 and below 1. */
  readonly significanceLevel: number;
}

export interface PowerPoint {
  readonly playerCount: number;
  /** Share of simulated trials that show a difference between the pucks. */
  readonly power: number;
  /** Share of simulated trials whose best rank sum is the truly best puck's (shared first places counted in part). */
  readonly bestFirstShare: number;
  /** Monte Carlo standard error of the power. */
  readonly standardError: number;
}

/**
 * Power of Friedman's test by simulation: scores are normal about the puck's mean and the player's level, rounded to the
 * scale and held inside it, and tested by F of Iman and Davenport (1980), which keeps its level for few players.
 * @param simulations trials per number of players, 1 or more
 */
export function simulatedPower(
  assumption: PowerAssumption,
  playerCount: number,
  simulations: number,
  seed: number,
): PowerPoint {
  const { means, spread, significanceLevel } = assumption;
  const k = means.length;
  if (!(k >= 2)) throw new RangeError(`means are ${k}; there must be 2 or more.`);
  if (!(playerCount >= 2)) throw new RangeError(`players are ${playerCount}; they must be 2 or more.`);
  if (!(spread > 0)) throw new RangeError(`spread is ${spread}; it must be above 0.`);
  const draws = randomDraws(seed);
  const best = means.indexOf(Math.max(...means));
  const scores = new Float64Array(playerCount * k);
  let shown = 0;
  let bestFirst = 0;
  for (let m = 0; m < simulations; m++) {
    fillScores(scores, assumption, draws);
    const test = friedmanTest({ blockCount: playerCount, treatmentCount: k, scores });
    if (!test.ok) {
      bestFirst += 1 / k;
      continue;
    }
    if (test.value.fP <= significanceLevel) shown++;
    const least = Math.min(...test.value.rankSums);
    const first = test.value.rankSums.filter((sum) => sum <= least + 1e-9).length;
    if (test.value.rankSums[best] <= least + 1e-9) bestFirst += 1 / first;
  }
  const power = shown / simulations;
  return {
    playerCount,
    power,
    bestFirstShare: bestFirst / simulations,
    standardError: Math.sqrt(Math.max(power * (1 - power), 0.25 / simulations) / simulations),
  };
}

function fillScores(
  scores: Float64Array,
  { means, spread, playerSpread, scale }: PowerAssumption,
  draws: RandomDraws,
): void {
  const { lowest, highest, step } = scale;
  for (let i = 0; i < scores.length; i += means.length) {
    const level = playerSpread > 0 ? playerSpread * draws.normal() : 0;
    for (let j = 0; j < means.length; j++) {
      const liking = means[j] + level + spread * draws.normal();
      const steps = Math.round((liking - lowest) / step);
      scores[i + j] = Math.min(highest, Math.max(lowest, lowest + steps * step));
    }
  }
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
