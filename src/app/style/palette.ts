import type { MarkName } from "./markName";

/** Colour, dash and marks of one design, in every plot alike. Colours and marks differ, so that none depends on colour alone. */
export interface SeriesStyle {
  readonly color: string;
  readonly dash: "solid" | "dash" | "dot" | "dashdot" | "longdash" | "longdashdot";
  /** By the plot library's names. */
  readonly symbol: "circle" | "square" | "diamond" | "triangle-up" | "triangle-down" | "hexagon2" | "cross" | "bowtie";
  /** The same mark in the page's own pictures. */
  readonly mark: MarkName;
}

/** Colours that a drawing library needs as values; the style sheet has the same ones as custom properties. */
export interface Palette {
  readonly ink: string;
  readonly softInk: string;
  readonly grid: string;
  readonly paper: string;
  readonly sheet: string;
  readonly rule: string;
  /** Of what is at hand: the present design and its handles. */
  readonly accent: string;
  /** The crisis and what needs attention; never a design. */
  readonly ember: string;
  /** Below and above the stream's pressure, in flow pictures alone. */
  readonly suction: string;
  readonly pressure: string;
  readonly water: string;
  readonly streamline: string;
  readonly wake: string;
  readonly body: string;
  /** Published points and outlines. */
  readonly outline: string;
  readonly published: readonly string[];
  readonly series: readonly SeriesStyle[];
}

const dashes = ["solid", "dash", "dot", "dashdot", "longdash", "longdashdot", "dash", "dot"] as const;
const symbols = ["diamond", "square", "triangle-up", "hexagon2", "triangle-down", "cross", "circle", "bowtie"] as const;
const marks = ["diamond", "square", "triangle", "hexagon", "nabla", "cross", "circle", "bow"] as const;

function styles(colors: readonly string[]): SeriesStyle[] {
  return colors.map((color, i) => ({ color, dash: dashes[i], symbol: symbols[i], mark: marks[i] }));
}

export const lightPalette: Palette = {
  ink: "#1c2b33",
  softInk: "#4c5b64",
  grid: "#ddd6c6",
  paper: "#f1ece0",
  sheet: "#fffdf7",
  rule: "#d3cab6",
  accent: "#0b5c74",
  ember: "#a84a08",
  suction: "#3b4aa8",
  pressure: "#d3a02c",
  water: "#e6eff0",
  streamline: "#8fb0b6",
  wake: "#d9d9d2",
  body: "#dad2bf",
  outline: "#857b66",
  published: ["#6b5f4b", "#8f8571"],
  series: styles(["#0b5c74", "#1d1859", "#4c744c", "#443600", "#a532a3", "#941030", "#645b55", "#1e1a14"]),
};

export const darkPalette: Palette = {
  ink: "#ece6d9",
  softInk: "#b3bdbf",
  grid: "#26363e",
  paper: "#0e181d",
  sheet: "#15222a",
  rule: "#32444c",
  accent: "#62c6d8",
  ember: "#f29a52",
  suction: "#9aa6ff",
  pressure: "#c79a2a",
  water: "#12252d",
  streamline: "#44707b",
  wake: "#1b2a30",
  body: "#43443f",
  outline: "#82939a",
  published: ["#c9bda4", "#968c78"],
  series: styles(["#62c6d8", "#6f8fff", "#d5eaaa", "#ffe55c", "#c56faa", "#f2567b", "#a8abad", "#fffaf0"]),
};

/** The style of the n-th overlaid curve; the list repeats. */
export function seriesStyle(palette: Palette, index: number): SeriesStyle {
  return palette.series[index % palette.series.length];
}
