import type { DragBand } from "../../engine/trust/dragInterval";
import type { ConfinedDrag } from "./confinedDrag";

/** A drag coefficient with its band as a tunnel shows them. */
export interface ConfinedBand extends ConfinedDrag {
  readonly low: number;
  readonly high: number;
}

/**
 * A band in an unbounded stream, between walls. Above the largest drag that the method takes the band ends at the expected
 * value's own ratio.
 * @param confine what walls make of one drag coefficient; null where the blockage is too large for it
 * @returns null where that is so for the expected value
 */
export function confinedBand(
  { low, expected, high }: DragBand,
  confine: (drag: number) => ConfinedDrag | null,
): ConfinedBand | null {
  const own = confine(expected);
  if (own === null) return null;
  const ratio = expected === 0 ? 1 : own.dragCoefficient / expected;
  const edge = (drag: number) => confine(drag)?.dragCoefficient ?? drag * ratio;
  return { ...own, low: edge(low), high: edge(high) };
}
