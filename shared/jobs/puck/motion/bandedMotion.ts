import type { DragBand } from "../../../engine/trust/dragInterval";
import type { Result } from "../../../result";
import { success } from "../../../result";

/** A motion with the expected figures, and with the least and the most resistance that the bands allow. */
export interface BandedMotion<T> {
  readonly expected: T;
  readonly leastResistance: T;
  readonly mostResistance: T;
}

/** One end of every band at once. */
export type BandEnd = keyof DragBand;

/**
 * Carries bands through a motion: runs it three times, with all resistances at their expected, lowest and highest.
 * A slide and a sink slow down with every resistance, so there the runs bound what any mixture inside the bands gives; a
 * flick's path bends as well, and the runs are then its two ends, not a proven bound.
 */
export function bandedMotion<T>(run: (end: BandEnd) => Result<T>): Result<BandedMotion<T>> {
  const expected = run("expected");
  if (!expected.ok) return expected;
  const least = run("low");
  if (!least.ok) return least;
  const most = run("high");
  if (!most.ok) return most;
  return success({ expected: expected.value, leastResistance: least.value, mostResistance: most.value });
}
