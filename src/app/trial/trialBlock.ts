import type { TrialBlockDocument } from "../../../shared/jobs/trial/trialBlockDocument";
import { type TrialPlan, trialPlan } from "../../../shared/jobs/trial/trialPlan";
import type { TrialSetup } from "../../../shared/jobs/trial/trialSetup";
import { badCells } from "./scoreErrors";
import { cellKey, type TrialInputs } from "./trialInputs";

/** The inputs as a trial block. @param isClean leaves out what is typed but no score, so that the rest can be analysed */
export function trialBlock(inputs: TrialInputs, isClean = false): TrialBlockDocument {
  const { pucks, players, activities, scale, power, analysis } = inputs;
  const rows = scoreRows(inputs, isClean ? badCells(inputs) : new Map());
  return {
    pucks: pucks.map(({ name, code, drag }) => ({ name, code, ...(drag === null ? {} : { drag }) })),
    players: players.map(({ name }) => name),
    activities: activities.map(({ name, weight, instruction }) => ({
      name,
      weight,
      ...(instruction === "" ? {} : { instruction }),
    })),
    scale: {
      lowest: scale.lowest,
      highest: scale.highest,
      ...(scale.step === 1 ? {} : { step: scale.step }),
      question: scale.question,
      lowestMeans: scale.lowestMeans,
      highestMeans: scale.highestMeans,
      ...(scale.isHigherBetter ? {} : { higherIsBetter: false }),
    },
    seed: inputs.seed,
    ...(inputs.repeats === 1 ? {} : { repeats: inputs.repeats }),
    ...(inputs.isUnblinded ? { unblinded: true } : {}),
    ...(inputs.dragMeaning === "" ? {} : { dragMeaning: inputs.dragMeaning }),
    ...(rows.length === 0 ? {} : { scores: { data: { columns: [...scoreColumns], rows } } }),
    ...(analysis === undefined ? {} : { analysis }),
    ...(power.isWanted ? { power: powerBlock(inputs) } : {}),
  };
}

const scoreColumns = ["player", "activity", "repeat", "position", "code", "score", "comment"] as const;

/** The study of power, whether the case keeps it or not. */
export function powerBlock({ pucks, power }: TrialInputs): NonNullable<TrialBlockDocument["power"]> {
  const { spread, playerSpread, playerCounts, simulations, wantedPower } = power;
  const meanScores = pucks.map(({ expected }) => expected);
  return { meanScores, spread, playerSpread, playerCounts: [...playerCounts], simulations, wantedPower };
}

/** One row per typed score, in the order of players, activities, repeats and play. */
function scoreRows(inputs: TrialInputs, left: ReadonlyMap<string, string>): (string | number | null)[][] {
  if (Object.keys(inputs.cells).length === 0) return [];
  const plan = planOf(inputs);
  return plan.sessions.flatMap(({ player, activity, repeat }) =>
    sessionOrder(inputs, plan, player, activity, repeat).flatMap((puck, i) => {
      const place = {
        player: inputs.players[player].id,
        activity: inputs.activities[activity].id,
        repeat,
        puck: inputs.pucks[puck].id,
      };
      const cell = inputs.cells[cellKey(place)];
      if (cell === undefined) return [];
      const typed = left.has(cellKey(place)) ? null : asNumber(cell.typed);
      const names = [inputs.players[player].name, inputs.activities[activity].name];
      return [[...names, repeat, i + 1, inputs.pucks[puck].code, typed, cell.comment]];
    }),
  );
}

/** A plain number as one, so that a case reads as if written by hand; anything else as it was typed. */
function asNumber(typed: string): string | number | null {
  if (typed.trim() === "") return null;
  return String(Number(typed)) === typed ? Number(typed) : typed;
}

/** The inputs in the terms of the engine. */
export function setupOf({ pucks, players, activities, scale, seed, repeats }: TrialInputs): TrialSetup {
  return { pucks, players: players.map(({ name }) => name), activities, scale, seed, repeats };
}

let last: { readonly key: string; readonly plan: TrialPlan } | null = null;

/** The plan of the inputs; the last one is remembered, since every cell asks for it. */
export function planOf(inputs: TrialInputs): TrialPlan {
  const { pucks, players, activities, seed, repeats } = inputs;
  const key = [pucks.length, players.length, activities.length, seed, repeats].join(" ");
  if (last?.key !== key) last = { key, plan: trialPlan(setupOf(inputs)) };
  return last.plan;
}

/** Puck indices of a session in the order of play: as noted where a note fits, else as planned. */
export function sessionOrder(
  inputs: TrialInputs,
  plan: TrialPlan,
  player: number,
  activity: number,
  repeat: number,
): number[] {
  const session = plan.sessions.find(
    (one) => one.player === player && one.activity === activity && one.repeat === repeat,
  );
  const planned = session?.order ?? inputs.pucks.map((_, i) => i);
  const places = planned.map((puck, i) => {
    const key = cellKey({
      player: inputs.players[player].id,
      activity: inputs.activities[activity].id,
      repeat,
      puck: inputs.pucks[puck].id,
    });
    return { puck, at: inputs.cells[key]?.position ?? null, planned: i };
  });
  const order = new Array<number | null>(planned.length).fill(null);
  const rest: number[] = [];
  for (const { puck, at } of places) {
    if (at !== null && at <= order.length && order[at - 1] === null) order[at - 1] = puck;
    else rest.push(puck);
  }
  return order.map((puck) => puck ?? (rest.shift() as number));
}
