import type { Palette } from "../style/palette";
import type { Shape } from "./scene";

/** From a quantity to a place on the screen and back. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly isLogarithmic: boolean;
  readonly at: (value: number) => number;
  readonly valueAt: (place: number) => number;
}

/** @param start place of `from`, px @param end place of `to`, px */
export function scaleOf(from: number, to: number, start: number, end: number, isLogarithmic = false): Scale {
  const [a, b] = isLogarithmic ? [Math.log(from), Math.log(to)] : [from, to];
  const span = b - a || 1;
  return {
    from,
    to,
    isLogarithmic,
    at: (value) => start + (((isLogarithmic ? Math.log(value) : value) - a) / span) * (end - start),
    valueAt: (place) => {
      const value = a + ((place - start) / (end - start || 1)) * span;
      return isLogarithmic ? Math.exp(value) : value;
    },
  };
}

/** About so many round values between two ends. */
export function evenTicks(from: number, to: number, about: number): number[] {
  const span = to - from;
  if (!(span > 0)) return [from];
  const rough = span / Math.max(1, about);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough * 0.999)!;
  const ticks: number[] = [];
  for (let i = Math.ceil(from / step - 1e-9); i * step <= to + 1e-9 * span; i++) {
    ticks.push(Number((i * step).toPrecision(12)));
  }
  return ticks;
}

/** 1, 2 and 5 of every decade between two ends. */
export function decadeTicks(from: number, to: number): number[] {
  const ticks: number[] = [];
  for (let power = Math.floor(Math.log10(from)); power <= Math.ceil(Math.log10(to)); power++) {
    for (const lead of [1, 2, 5]) {
      const tick = Number((lead * 10 ** power).toPrecision(3));
      if (tick >= from * 0.999 && tick <= to * 1.001) ticks.push(tick);
    }
  }
  return ticks;
}

/** "2e5" for Reynolds numbers. */
export function powerText(value: number): string {
  return value.toExponential(0).replace("+", "");
}

/** A line with ticks and numbers below it, or above it. */
export function horizontalAxis(
  scale: Scale,
  y: number,
  ticks: readonly number[],
  text: (tick: number) => string,
  palette: Palette,
  side: "below" | "above" = "below",
): Shape[] {
  const out = side === "below" ? 1 : -1;
  return [
    {
      kind: "lines",
      lines: [
        [scale.at(scale.from), y, scale.at(scale.to), y],
        ...ticks.map((tick) => [scale.at(tick), y, scale.at(tick), y + 4 * out]),
      ],
      stroke: palette.outline,
      width: 1,
    },
    ...ticks.map(
      (tick): Shape => ({
        kind: "text",
        x: scale.at(tick),
        y: y + (side === "below" ? 15 : -7),
        text: text(tick),
        fill: palette.softInk,
        anchor: "middle",
      }),
    ),
  ];
}

/** Faint level lines with their numbers on the left. */
export function levels(scale: Scale, left: number, right: number, ticks: readonly number[], palette: Palette): Shape[] {
  return [
    { kind: "lines", lines: ticks.map((tick) => [left, scale.at(tick), right, scale.at(tick)]), stroke: palette.grid },
    ...ticks.map(
      (tick): Shape => ({
        kind: "text",
        x: left - 6,
        y: scale.at(tick) + 4,
        text: String(tick),
        fill: palette.softInk,
        anchor: "end",
      }),
    ),
  ];
}
