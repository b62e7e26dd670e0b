import type { DragBand } from "../engine/trust/dragInterval";

/** A value with its band, for instance "0.55 (0.16-0.92)". */
export function bandText(band: DragBand, digits: number): string {
  return `${band.expected.toFixed(digits)} (${rangeText(band, digits)})`;
}

/** A band alone, for instance "0.16-0.92". */
export function rangeText(band: DragBand, digits: number): string {
  return `${band.low.toFixed(digits)}-${band.high.toFixed(digits)}`;
}
