import type { Handle } from "../../drawing/handles";

const coarse = 10;

/**
 * The value of a handle after a key: arrows by 0.1 mm or 0.5 degrees, ten times as much with Shift or Page keys, Home
 * and End to the range's ends where it has sensible ones. null for other keys.
 */
export function stepped(handle: Handle, key: string, shift: boolean): number | null {
  const fine = handle.kind === "angle" ? Math.PI / 360 : 1e-4;
  const step = fine * (shift ? coarse : 1);
  switch (key) {
    case "ArrowUp":
    case "ArrowRight":
      return rounded(handle.value + step, fine);
    case "ArrowDown":
    case "ArrowLeft":
      return rounded(handle.value - step, fine);
    case "PageUp":
      return rounded(handle.value + fine * coarse, fine);
    case "PageDown":
      return rounded(handle.value - fine * coarse, fine);
    default:
      return null;
  }
}

function rounded(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toPrecision(12));
}
