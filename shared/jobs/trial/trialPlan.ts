import { randomDraws } from "../../statistics/randomDraws";
import { shuffledOrder } from "../../statistics/shuffle";
import { type PlanBalance, planBalance } from "./planBalance";
import type { TrialSetup } from "./trialSetup";
import { williamsDesign } from "./williamsDesign";

/** One player's session: one activity, all pucks one after another. */
export interface TrialSession {
  readonly player: number;
  readonly activity: number;
  readonly repeat: number;
  /** Puck indices in the order of play. */
  readonly order: readonly number[];
}

export interface TrialPlan {
  readonly sessions: readonly TrialSession[];
  /** Sequences of the design; the trial is balanced when players are a multiple of their number. */
  readonly sequenceCount: number;
  /** One per activity, over all players and repeats. */
  readonly balanceByActivity: readonly PlanBalance[];
  /** The next numbers of players, from the present one down and up, that balance every activity; 0 when none below. */
  readonly balancedPlayerCounts: readonly [number, number];
}

/**
 * Who plays which puck when. Each activity and repeat goes through the sequences of a Williams design in a random order,
 * every sequence once before any comes again, with the pucks named at random; so that a player has different orders at
 * different activities.
 */
export function trialPlan({ pucks, players, activities, repeats, seed }: TrialSetup): TrialPlan {
  const k = pucks.length;
  const sequences = williamsDesign(k);
  const sessions: TrialSession[] = [];
  for (let activity = 0; activity < activities.length; activity++) {
    for (let repeat = 1; repeat <= repeats; repeat++) {
      // A stream of its own, going player by player: one player more leaves the orders of the others as they are.
      const draws = randomDraws(seed + 7919 * (1 + activity) + 104729 * repeat);
      const names = shuffledOrder(draws, k);
      let queue: number[] = [];
      for (let player = 0; player < players.length; player++) {
        if (queue.length === 0) queue = shuffledOrder(draws, sequences.length);
        const sequence = sequences[queue.pop() ?? 0];
        sessions.push({ player, activity, repeat, order: sequence.map((place) => names[place]) });
      }
    }
  }
  sessions.sort((a, b) => a.player - b.player || a.activity - b.activity || a.repeat - b.repeat);
  const below = Math.floor(players.length / sequences.length) * sequences.length;
  return {
    sessions,
    sequenceCount: sequences.length,
    balanceByActivity: activities.map((_, activity) =>
      planBalance(
        sessions.filter((session) => session.activity === activity).map(({ order }) => order),
        k,
      ),
    ),
    balancedPlayerCounts: [below, below === players.length ? below : below + sequences.length],
  };
}
