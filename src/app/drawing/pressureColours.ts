import type { Palette } from "../style/palette";

/** Steps of the scale of surface pressure, from the lowest Cp that has its own colour to stagnation. */
const lowest = -3;
const highest = 1;
const steps = 16;

/** Colours of the surface pressure: indigo below the stream's, the body's own at Cp 0, gold above. Index by `pressureStep`. */
export function pressureColours(palette: Palette): string[] {
  return Array.from({ length: steps }, (_, i) => {
    const cp = lowest + ((highest - lowest) * (i + 0.5)) / steps;
    return cp < 0
      ? mixed(palette.body, palette.suction, (cp / lowest) ** 0.6)
      : mixed(palette.body, palette.pressure, cp);
  });
}

export function pressureStep(cp: number): number {
  return Math.max(0, Math.min(steps - 1, Math.floor(((cp - lowest) / (highest - lowest)) * steps)));
}

function mixed(from: string, to: string, share: number): string {
  const part = (hex: string, at: number) => Number.parseInt(hex.slice(at, at + 2), 16);
  const blend = [1, 3, 5].map((at) => Math.round(part(from, at) + share * (part(to, at) - part(from, at))));
  return `#${blend.map((value) => value.toString(16).padStart(2, "0")).join("")}`;
}
