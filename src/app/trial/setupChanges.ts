import { blindCodes, mostBlindCodes } from "../../../shared/jobs/trial/blindCodes";
import { mostActivities, mostPlayers } from "../../../shared/jobs/trial/trialBlockDocument";
import { randomDraws } from "../../../shared/statistics/randomDraws";
import { freeName } from "../store/freeName";
import { freeId, type ScoreCell, type TrialInputs } from "./trialInputs";

/** Another puck with a code unlike all others. */
export function addPuck(inputs: TrialInputs): Partial<TrialInputs> {
  const { pucks, scale, seed } = inputs;
  if (pucks.length >= mostBlindCodes) return {};
  const id = freeId(pucks);
  const taken = pucks.map(({ code }) => code);
  const [code] = blindCodes(1, randomDraws(seed + 6007 * id), taken);
  const name = freeName(
    "New puck",
    pucks.map((puck) => puck.name),
  );
  return { pucks: [...pucks, { id, name, code, drag: null, expected: (scale.lowest + scale.highest) / 2 }] };
}

/** Other codes and another seed, for a trial that has no scores yet. */
export function drawAnew({ pucks, seed }: TrialInputs): Partial<TrialInputs> {
  const next = 1 + ((seed * 48271 + 11) % 999_983);
  const codes = blindCodes(pucks.length, randomDraws(next + 5001));
  return { seed: next, pucks: pucks.map((puck, i) => ({ ...puck, code: codes[i] })) };
}

export function addActivity({ activities }: TrialInputs): Partial<TrialInputs> {
  if (activities.length >= mostActivities) return {};
  const name = freeName(
    "Activity",
    activities.map((one) => one.name),
  );
  return { activities: [...activities, { id: freeId(activities), name, weight: 1, instruction: "" }] };
}

export function addPlayers({ players }: TrialInputs, count: number): Partial<TrialInputs> {
  let next = [...players];
  for (let i = 0; i < count && next.length < mostPlayers; i++) {
    const id = freeId(next);
    const name = freeName(
      `P${String(next.length + 1).padStart(2, "0")}`,
      next.map((one) => one.name),
    );
    next = [...next, { id, name }];
  }
  return { players: next };
}

export function removePuck({ pucks, cells }: TrialInputs, id: number): Partial<TrialInputs> {
  return { pucks: pucks.filter((one) => one.id !== id), cells: cellsWithout(cells, 3, id) };
}

export function removeActivity({ activities, cells }: TrialInputs, id: number): Partial<TrialInputs> {
  return { activities: activities.filter((one) => one.id !== id), cells: cellsWithout(cells, 0, id) };
}

export function removePlayer({ players, cells }: TrialInputs, id: number): Partial<TrialInputs> {
  return { players: players.filter((one) => one.id !== id), cells: cellsWithout(cells, 2, id) };
}

/** @param part of the cell's key: 0 activity, 2 player, 3 puck */
function cellsWithout(cells: TrialInputs["cells"], part: number, id: number): Record<string, ScoreCell> {
  return Object.fromEntries(Object.entries(cells).filter(([key]) => key.split(".")[part] !== String(id)));
}
