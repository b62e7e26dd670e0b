import { counted } from "./numberWords";
import type { TrialCase } from "./trialCase";
import type { PlanResult } from "./trialResult";

/** The plan with names and codes in place of indices, and a sentence on how even it is. */
export function planResult({ setup, plan }: Pick<TrialCase, "setup" | "plan">): PlanResult {
  const { players, pucks, activities, repeats } = setup;
  const isBalanced = plan.balanceByActivity.every((one) => one.isPlaceBalanced && one.isCarryOverBalanced);
  const [below, above] = plan.balancedPlayerCounts;
  const sequences = `${counted(plan.sequenceCount, "sequence")} of a Williams design for ${counted(pucks.length, "puck")}`;
  const others = below === 0 ? `${above}` : `${below} or ${above}`;
  return {
    sessions: plan.sessions.map(({ player, activity, repeat, order }) => ({
      player: players[player],
      activity: activities[activity].name,
      repeat,
      codes: order.map((puck) => pucks[puck].code),
    })),
    sequenceCount: plan.sequenceCount,
    isBalanced,
    sentence: isBalanced
      ? `${sequences}, each ${counted((players.length * repeats) / plan.sequenceCount, "time")} at every activity: every puck comes equally often at every place and directly after every other.`
      : `${sequences} do not share out evenly among ${counted(players.length, "player")}: places and neighbours are as even as so many allow. ${others} players would balance them.`,
  };
}
