import { typedScore } from "../../../shared/jobs/trial/readScores";
import type { TrialInputs } from "./trialInputs";

/** What is wrong with typed scores, by the key of the cell. */
export function badCells({ cells, scale }: TrialInputs): Map<string, string> {
  const bad = new Map<string, string>();
  for (const [key, { typed }] of Object.entries(cells)) {
    // A comma inside digits is taken for a decimal one: scores have no thousands.
    const score = typedScore(typed, scale, typed.includes(",") ? "comma" : "point");
    if (!score.ok) bad.set(key, score.reason);
  }
  return bad;
}
