import { percentText } from "./numberWords";
import { fewestPlayers, type PowerPoint, simulatedPower } from "./powerSimulation";
import type { PowerStudy } from "./trialCase";
import type { PowerResult } from "./trialResult";

/** The power over the numbers of players, one number per `next()`; yields what was done. */
export function* powerSteps(
  { assumption, playerCounts, simulations, wantedPower }: PowerStudy,
  seed: number,
): Generator<string, PowerResult> {
  const curve: PowerPoint[] = [];
  for (const playerCount of playerCounts) {
    curve.push(simulatedPower(assumption, playerCount, simulations, seed + 2001));
    yield `simulated ${playerCount} players`;
  }
  const fewest = fewestPlayers(curve, wantedPower);
  const forPair = fewestPlayers(
    curve.map((point) => ({ ...point, power: point.pairPower })),
    wantedPower,
  );
  const wanted = percentText(wantedPower);
  const family = assumption.rankings > 1 ? `, shared over ${assumption.rankings} rankings` : "";
  const what = `a difference between the pucks of one activity at ${percentText(assumption.significanceLevel)}${family}, if pucks and players are as assumed`;
  return {
    curve,
    simulations,
    wantedPower,
    fewestPlayers: fewest,
    sentence: `${
      fewest === null
        ? `None of these numbers of players has a chance of ${wanted} to show ${what}.`
        : `${fewest} players have a chance of ${wanted} or more to show ${what}. Plan for a few more: some will miss a session.`
    } ${
      forPair === null
        ? `None of them has it to show the best puck over the last one as a pair.`
        : `To show the best puck over the last one as a pair takes ${forPair}.`
    }`,
  };
}
