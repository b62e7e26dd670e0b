import type { Data, Layout } from "plotly.js-dist-min";
import type { Palette } from "../style/palette";

/** The numbers of a plot as a table, for readers who cannot use the picture and for the CSV export. */
export interface DataTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** A plot as plain data. Made by pure functions from results; drawn by the plot component. */
export interface PlotFigure {
  /** Stable name: the element's id and the stem of exported files. */
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
  /** In plot coordinates: exponents of ten on a logarithmic axis. */
  readonly range?: readonly [number, number];
  readonly fromZero?: boolean;
}

/** The layout that all plots share. */
export function figureLayout(palette: Palette, x: AxisChoice, y: AxisChoice): Partial<Layout> {
  return {
    autosize: true,
    margin: { l: 64, r: 16, t: 12, b: 52 },
    paper_bgcolor: "rgba(0,0,0,0)",
    plot_bgcolor: "rgba(0,0,0,0)",
    font: { family: "inherit", size: 13, color: palette.ink },
    xaxis: axis(palette, x),
    yaxis: axis(palette, y),
    hovermode: "closest",
    hoverlabel: { bgcolor: palette.sheet, bordercolor: palette.softInk, font: { color: palette.ink } },
    showlegend: true,
    legend: { orientation: "h", x: 0, y: -0.22, yanchor: "top", font: { size: 12 }, bgcolor: "rgba(0,0,0,0)" },
    modebar: { bgcolor: "rgba(0,0,0,0)", color: palette.softInk, activecolor: palette.ink },
    uirevision: "keep",
  };
}

function axis(palette: Palette, choice: AxisChoice): Layout["xaxis"] {
  return {
    title: { text: choice.title, standoff: 8 },
    type: choice.logarithmic ? "log" : "linear",
    ...(choice.logarithmic ? { dtick: "D2", exponentformat: "power" as const } : {}),
    ...(choice.range ? { range: [...choice.range] } : {}),
    ...(choice.fromZero ? { rangemode: "tozero" as const } : {}),
    gridcolor: palette.grid,
    zerolinecolor: palette.grid,
    linecolor: palette.softInk,
    tickcolor: palette.softInk,
    ticks: "outside",
    automargin: true,
  };
}

/** "#rrggbb" with an opacity, for bands. */
export function withOpacity(hex: string, opacity: number): string {
  const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  return `rgba(${r},${g},${b},${opacity})`;
}
