import type { LevelProcess } from "./levelProcess";
import type { KnownShift } from "./shiftProcess";

/** One way that the engine's errors may be: a level process, and the shifts of the crises that were measured. */
export interface ErrorComponent {
  /** Probability. */
  readonly weight: number;
  readonly level: LevelProcess;
  readonly shifts: readonly KnownShift[];
}

/**
 * What is known of the engine's errors. Published values alone give one component; measurements about a crisis give
 * several, one for each place that the crisis may have. Weights add up to 1.
 */
export type ErrorKnowledge = readonly ErrorComponent[];

/** What published values alone say. */
export function knowledgeOf(level: LevelProcess): ErrorKnowledge {
  return [{ weight: 1, level, shifts: [] }];
}
