/** Colour, dash and marker of one overlaid curve. Curves differ in all three, so that none depends on colour alone. */
export interface SeriesStyle {
  readonly color: string;
  readonly dash: "solid" | "dash" | "dot" | "dashdot" | "longdash" | "longdashdot";
  readonly symbol: "circle" | "square" | "diamond" | "triangle-up" | "cross" | "star-triangle-down";
}

/** Colours that a drawing library needs as values; the style sheet has the same ones as custom properties. */
export interface Palette {
  readonly ink: string;
  readonly softInk: string;
  readonly grid: string;
  readonly sheet: string;
  readonly published: readonly string[];
  readonly series: readonly SeriesStyle[];
}

const dashes = ["solid", "dash", "dot", "dashdot", "longdash", "longdashdot"] as const;
const symbols = ["circle", "square", "diamond", "triangle-up", "cross", "star-triangle-down"] as const;

function styles(colors: readonly string[]): SeriesStyle[] {
  return colors.map((color, i) => ({
    color,
    dash: dashes[i % dashes.length],
    symbol: symbols[i % symbols.length],
  }));
}

export const lightPalette: Palette = {
  ink: "#1c2b33",
  softInk: "#4c5b64",
  grid: "#ddd6c6",
  sheet: "#fffdf7",
  published: ["#6b5f4b", "#8f8571"],
  series: styles(["#0b5c74", "#c2570c", "#7a3e94", "#1b8a62", "#a3224c", "#3d4aa8"]),
};

export const darkPalette: Palette = {
  ink: "#ece6d9",
  softInk: "#b3bdbf",
  grid: "#32444c",
  sheet: "#15222a",
  published: ["#c9bda4", "#968c78"],
  series: styles(["#6cc7d8", "#f29a52", "#c79be0", "#6fd3a4", "#f3839f", "#9fb0ff"]),
};

/** The style of the n-th overlaid curve; the list repeats. */
export function seriesStyle(palette: Palette, index: number): SeriesStyle {
  return palette.series[index % palette.series.length];
}
