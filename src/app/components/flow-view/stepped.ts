import type { Handle } from "../../drawing/handles";
import { type RingStep, stepValue } from "../ring/ring";

/** What a handle moves by, and by hand snaps to: 0.1 mm or half a degree, and a tenth of it. */
function stepOf(handle: Handle): number {
  return handle.kind === "angle" ? Math.PI / 360 : 1e-4;
}

/** The value that a key leads to. */
export function stepped(handle: Handle, step: RingStep): number {
  const { value, lowest, highest } = handle;
  return stepValue(step, { value, lowest, highest, size: stepOf(handle) });
}

/** A value from the hand on the grid of steps. */
export function snapped(handle: Handle, value: number, isFine: boolean): number {
  const size = stepOf(handle) * (isFine ? 0.1 : 1);
  return Number((Math.round(value / size) * size).toPrecision(12));
}
