import { randomDraws } from "../../statistics/randomDraws";
import { blockRows } from "./blockScores";
import { activityScores, overallScores } from "./scoreMatrix";
import type { TrialCase } from "./trialCase";

/**
 * Mean standing of every puck over panels of as many players drawn with replacement, -1 (always last) to 1 (always first),
 * by name, shape [draws]. In one draw the panel is the same for all pucks. Source: Efron & Tibshirani (1993), An
 * Introduction to the Bootstrap, ch. 13.
 * @returns null without scores; a puck that nobody of a panel scored keeps its mean over all players there
 */
export function likingDraws(
  { setup, scores }: TrialCase,
  draws: number,
  seed: number,
): ReadonlyMap<string, Float64Array> | null {
  if (scores === null) return null;
  const likings = setup.activities.map((_, activity) => activityScores(setup, scores, activity));
  const rows = blockRows(
    overallScores(
      likings,
      setup.activities.map(({ weight }) => weight),
    ),
  );
  const random = randomDraws(seed);
  const found = setup.pucks.map(() => new Float64Array(draws));
  const all = setup.pucks.map((_, j) => meanOf(rows, j) ?? 0);
  for (let k = 0; k < draws; k++) {
    const panel = rows.map(() => rows[random.below(rows.length)]);
    found.forEach((column, j) => {
      column[k] = meanOf(panel, j) ?? all[j];
    });
  }
  return new Map(setup.pucks.map(({ name }, j) => [name, found[j]]));
}

function meanOf(rows: readonly (readonly number[])[], column: number): number | null {
  let sum = 0;
  let count = 0;
  for (const row of rows) {
    if (Number.isNaN(row[column])) continue;
    sum += row[column];
    count++;
  }
  return count === 0 ? null : sum / count;
}
