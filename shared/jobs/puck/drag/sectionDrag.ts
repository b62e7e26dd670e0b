import type { Regime } from "../../../engine/solution";
import type { DragBand } from "../../../engine/trust/dragInterval";

/** Drag coefficient of an infinitely long section at one Reynolds number, on its width across the stream. */
export interface SectionDrag extends DragBand {
  /** Regime of the flow, where the solver named it. */
  readonly regime: Regime | null;
  /** Regimes of the states behind low and high, where the band holds more than one state; regime when left out. */
  readonly lowRegime?: Regime | null;
  readonly highRegime?: Regime | null;
}

/** Section drag over the Reynolds number on the section's width across the stream. */
export type SectionDragCurve = (reynolds: number) => SectionDrag;

/** One computed or measured point of a drag curve. */
export interface SectionDragPoint extends SectionDrag {
  readonly reynolds: number;
}

/**
 * A drag curve through points: linear in the logarithm of the Reynolds number between them, level beyond the ends, the
 * regimes those of the nearer point.
 * @param points one or more, the Reynolds number above 0 and rising
 */
export function tabulatedSectionDrag(points: readonly SectionDragPoint[]): SectionDragCurve {
  if (points.length === 0) throw new RangeError("a drag curve has 0 points; it needs 1 or more.");
  points.forEach((point, i) => {
    const last = i === 0 ? 0 : points[i - 1].reynolds;
    if (!(point.reynolds > last)) {
      throw new RangeError(`Re is ${point.reynolds} at point ${i} after ${last}; it must be above 0 and rise.`);
    }
  });
  return (reynolds) => {
    const above = points.findIndex((point) => point.reynolds >= reynolds);
    if (above === 0) return points[0];
    if (above < 0) return points[points.length - 1];
    const a = points[above - 1];
    const b = points[above];
    const share = Math.log(reynolds / a.reynolds) / Math.log(b.reynolds / a.reynolds);
    const between = (low: number, high: number) => low + (high - low) * share;
    const { regime, lowRegime, highRegime } = share < 0.5 ? a : b;
    return {
      low: between(a.low, b.low),
      expected: between(a.expected, b.expected),
      high: between(a.high, b.high),
      regime,
      lowRegime,
      highRegime,
    };
  };
}
