import type { RandomDraws } from "../../statistics/randomDraws";
import type { ScoreScale } from "./trialSetup";

/** What simulated scores are drawn from. */
export interface ScoreAssumption {
  /** Mean liking of each puck in score units, before it is rounded to the scale; the best one highest. */
  readonly means: readonly number[];
  /** Standard deviation of a player's score about a puck's mean and the player's own level, score units, above 0. */
  readonly spread: number;
  /** Standard deviation of the players' own levels, score units, 0 or more: some give high scores, some low. */
  readonly playerSpread: number;
  readonly scale: Pick<ScoreScale, "lowest" | "highest" | "step">;
}

/**
 * Fills in the scores of one panel: normal about the puck's mean and the player's level, rounded to the scale and held
 * inside it.
 * @param scores shape [players * pucks], player by player
 */
export function fillScores(
  scores: Float64Array,
  { means, spread, playerSpread, scale }: ScoreAssumption,
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
