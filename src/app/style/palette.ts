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
  series: styles(["#0b5c74", "#c9690a", "#8a4aa6", "#2a9a6c", "#8a1538", "#3440a0"]),
};

export const darkPalette: Palette = {
  ink: "#ece6d9",
  softInk: "#b3bdbf",
  grid: "#32444c",
  sheet: "#15222a",
  published: ["#c9bda4", "#968c78"],
  series: styles(["#4dc4bf", "#f2a052", "#d59cf0", "#b9f0c4", "#e2607f", "#7d8cf5"]),
};

/** The style of the n-th overlaid curve; the list repeats. */
export function seriesStyle(palette: Palette, index: number): SeriesStyle {
  return palette.series[index % palette.series.length];
}
