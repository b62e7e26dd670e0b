import type { Data, Layout } from "plotly.js-dist-min";
import type { Palette } from "../style/palette";

/** The numbers of a plot as a table, for readers who cannot use the picture and for the CSV export. */
export interface DataTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** A plot as plain data. Made by pure functions from results; drawn by the plot component. */
export interface PlotFigure {
  /** Stable name: the stem of exported files. */
  readonly key: string;
  readonly title: string;
  /** One or two sentences: what is shown, and which area the coefficients are on. */
  readonly caption: string;
  readonly data: readonly Data[];
  readonly layout: Partial<Layout>;
  readonly table: DataTable;
}

export interface AxisChoice {
  readonly title: string;
  readonly logarithmic?: boolean;
  /** All values that must be in sight; the axis spans them with a margin. */
  readonly values: Iterable<number | null>;
  readonly fromZero?: boolean;
}

/** Margins of every plot, px: fixed, so that nothing is measured while a handle is dragged. */
export const plotMargin = { l: 66, r: 14, t: 10, b: 50 } as const;

/** The layout that all plots share. The legend is the page's own; it is drawn into exported pictures only. */
export function figureLayout(palette: Palette, x: AxisChoice, y: AxisChoice): Partial<Layout> {
  return {
    margin: { ...plotMargin },
    paper_bgcolor: "rgba(0,0,0,0)",
    plot_bgcolor: "rgba(0,0,0,0)",
    font: { size: 13, color: palette.ink },
    xaxis: axis(palette, x),
    yaxis: axis(palette, y),
    hovermode: "closest",
    hoverlabel: { bgcolor: palette.sheet, bordercolor: palette.softInk, font: { color: palette.ink } },
    showlegend: false,
    modebar: { bgcolor: "rgba(0,0,0,0)", color: palette.softInk, activecolor: palette.ink },
    uirevision: "keep",
  };
}

function axis(palette: Palette, choice: AxisChoice): Layout["xaxis"] {
  const range = axisRange(choice);
  const isLong = choice.logarithmic && range[1] - range[0] >= 2;
  return {
    title: { text: choice.title, standoff: 6, font: { size: 13 } },
    type: choice.logarithmic ? "log" : "linear",
    ...(choice.logarithmic
      ? { dtick: isLong ? 1 : "D2", exponentformat: "power" as const }
      : { nticks: 7, exponentformat: "power" as const }),
    range,
    gridcolor: palette.grid,
    zerolinecolor: palette.grid,
    linecolor: palette.softInk,
    tickcolor: palette.softInk,
    tickfont: { size: 12 },
    ticks: "outside",
    automargin: false,
  } as Layout["xaxis"];
}

/** The range of an axis in its own coordinates (exponents of ten when it is logarithmic), 4 % wider than the values. */
export function axisRange({ values, logarithmic, fromZero }: AxisChoice): [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value === null || !Number.isFinite(value) || (logarithmic && !(value > 0))) continue;
    const at = logarithmic ? Math.log10(value) : value;
    low = Math.min(low, at);
    high = Math.max(high, at);
  }
  if (!(high >= low)) return logarithmic ? [4, 7] : [0, 1];
  const spread = high - low || Math.abs(high) || 1;
  return [fromZero ? Math.min(0, low - 0.04 * spread) : low - 0.04 * spread, high + 0.04 * spread];
}

/** "#rrggbb" with an opacity, for bands. */
export function withOpacity(hex: string, opacity: number): string {
  const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  return `rgba(${r},${g},${b},${opacity})`;
}
