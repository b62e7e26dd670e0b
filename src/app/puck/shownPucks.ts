import type { PuckResult } from "../../../shared/jobs/puck/puckResult";
import type { PuckAnswers } from "./puckAnswers";
import { playParts, sameParts } from "./puckChanges";

/** The solved pucks in the order in which they are drawn: candidate, baseline, then pins solved for the same play. */
export function shownPucks({ solved, pins }: Pick<PuckAnswers, "solved" | "pins">): PuckResult[] {
  if (solved === null) return [];
  const pinned = pins.flatMap(({ result, solvedFor, make }) =>
    result !== null && solvedFor !== null && sameParts(solvedFor, solved.inputs, playParts)
      ? [{ ...result, name: make.spec.name }]
      : [],
  );
  return [solved.candidate, solved.baseline, ...pinned];
}
