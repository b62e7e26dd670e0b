import type { PuckResult } from "../../../shared/jobs/puck/puckResult";
import type { PuckAnswers } from "../puck/puckAnswers";
import type { TrialPuckInputs } from "./trialInputs";

/** What the drags from the puck view are of. */
export const puckViewDragMeaning = "Drag over the baseline's, weighted by attitude and averaged (from the puck view)";

/** Drags over the baseline's by the pucks' names, of what the puck view has solved: baseline, candidate and pins. */
export function puckViewDrags({ solved, pins }: Pick<PuckAnswers, "solved" | "pins">): Map<string, number> {
  const drags = new Map<string, number>();
  const add = ({ name, comparisons }: PuckResult) => {
    const index = comparisons[0]?.overall.index.expected;
    if (index !== undefined) drags.set(name, index);
  };
  for (const { result } of pins) if (result !== null) add(result);
  if (solved !== null) {
    add(solved.candidate);
    drags.set(solved.baseline.name, 1);
  }
  return drags;
}

/** The pucks with the drags of the same names in place; the others are left as they are. */
export function withDrags(
  pucks: readonly TrialPuckInputs[],
  drags: ReadonlyMap<string, number>,
): { readonly pucks: TrialPuckInputs[]; readonly found: readonly string[] } {
  const plain = new Map([...drags].map(([name, drag]) => [name.trim().toLowerCase(), drag]));
  const found: string[] = [];
  const changed = pucks.map((puck) => {
    const drag = plain.get(puck.name.trim().toLowerCase());
    if (drag === undefined || !(drag > 0)) return puck;
    found.push(puck.name);
    return { ...puck, drag: Number(drag.toPrecision(4)) };
  });
  return { pucks: changed, found };
}
