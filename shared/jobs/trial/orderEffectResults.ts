import { randomDraws } from "../../statistics/randomDraws";
import { pText } from "./numberWords";
import { type OrderEffectTest, orderEffects, type SessionScore } from "./orderEffects";
import type { TrialCase } from "./trialCase";
import type { OrderEffectResult } from "./trialResult";
import type { TrialScore } from "./trialSetup";

/** Position and carry-over over all activities, each puck with its own effect at every activity. */
export function orderEffectResults(theCase: TrialCase, scores: readonly TrialScore[]): OrderEffectResult[] {
  const { setup, analysis } = theCase;
  const { pucks, activities, repeats } = setup;
  const sessionOf = ({ player, activity, repeat }: TrialScore) =>
    (player * activities.length + activity) * repeats + (repeat - 1);
  const pucksAt = new Map(scores.map((one) => [`${sessionOf(one)} ${one.position}`, one.puck]));
  const placed = scores.flatMap((one): SessionScore[] => {
    if (one.score === null || one.position === null) return [];
    const before = one.position === 1 ? null : pucksAt.get(`${sessionOf(one)} ${one.position - 1}`);
    // Without knowing what came before, the score says nothing certain about carry-over.
    if (before === undefined) return [];
    return [
      {
        block: sessionOf(one),
        treatment: one.activity * pucks.length + one.puck,
        position: one.position - 1,
        before,
        score: setup.scale.isHigherBetter ? one.score : -one.score,
      },
    ];
  });
  if (placed.length === 0) return [];
  const found = orderEffects(placed, pucks.length, analysis.permutations, randomDraws(setup.seed + 4001));
  const positions = found.position?.effects.map((_, i) => String(i + 1)) ?? [];
  const codes = pucks.map(({ code }) => code);
  return [
    ...result("position", found.position, positions, analysis.significanceLevel),
    ...result("carryOver", found.carryOver, codes, analysis.significanceLevel),
  ];
}

function result(
  effect: OrderEffectResult["effect"],
  test: OrderEffectTest | null,
  levels: readonly string[],
  significanceLevel: number,
): OrderEffectResult[] {
  if (test === null) return [];
  const what = effect === "position" ? "The place in the session" : "The puck played just before";
  const p = `F ${test.fStatistic.toFixed(2)}, p ${pText(test.permuted.pValue)} by permutation`;
  const spread = Math.max(...test.effects) - Math.min(...test.effects);
  const sentence =
    test.permuted.pValue <= significanceLevel
      ? `${what} changes the scores by more than chance (${p}), by up to ${spread.toFixed(1)} points. The balanced order keeps it from favouring a puck; with missing scores or an uneven plan it may.`
      : `${what} is not shown to change the scores (${p}).`;
  return [{ effect, levels, ...test, sentence }];
}
