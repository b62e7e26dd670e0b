import type { Data } from "plotly.js-dist-min";
import { type Palette, seriesStyle } from "../style/palette";
import { figureLayout, type PlotFigure } from "./plotFigure";

/** A goal or a dimension as it is shown. */
export interface FrontColumn {
  readonly label: string;
  readonly unit: string;
}

/** One evaluated puck, values in the units of the columns. */
export interface FrontPoint {
  readonly variables: readonly number[];
  readonly goals: readonly number[];
}

export interface PuckFrontInput {
  readonly variables: readonly FrontColumn[];
  /** One or more; the first two are the plot's axes. */
  readonly goals: readonly FrontColumn[];
  readonly front: readonly FrontPoint[];
  /** Allowed pucks that another one beats. */
  readonly beaten: readonly FrontPoint[];
  /** Goals of the baseline; null where it has none. */
  readonly baseline: { readonly name: string; readonly goals: readonly number[] } | null;
  /** Number in the front of the member that is looked at; null for none. */
  readonly chosen: number | null;
}

/** The pucks that none beats, and the others, by two goals; over one dimension when there is a single goal. */
export function puckFrontFigure(input: PuckFrontInput, palette: Palette): PlotFigure {
  const { variables, goals, front, beaten, baseline } = input;
  const byGoals = goals.length > 1;
  const [xColumn, yColumn] = byGoals ? goals : [variables[0], goals[0]];
  const x = (point: FrontPoint) => (byGoals ? point.goals[0] : point.variables[0]);
  const y = (point: FrontPoint) => point.goals[byGoals ? 1 : 0];
  const style = seriesStyle(palette, 0);
  const chosen = input.chosen === null ? undefined : front[input.chosen];
  const hovertemplate = `%{x:.4g} ${xColumn.unit}<br>%{y:.4g} ${yColumn.unit}<extra>%{fullData.name}</extra>`;
  const data: Data[] = [
    {
      type: "scatter",
      mode: "markers",
      name: "beaten by another",
      x: beaten.map(x),
      y: beaten.map(y),
      hovertemplate,
      marker: { color: palette.published[1], symbol: "circle-open", size: 6, line: { width: 1.2 } },
    },
    {
      type: "scatter",
      mode: "markers",
      name: "front: none beats it",
      x: front.map(x),
      y: front.map(y),
      hovertemplate,
      marker: { color: style.color, symbol: "circle", size: 9 },
    },
  ];
  if (baseline !== null && byGoals) {
    data.push({
      type: "scatter",
      mode: "markers",
      name: `baseline: ${baseline.name}`,
      x: [baseline.goals[0]],
      y: [baseline.goals[1]],
      hovertemplate,
      marker: { color: seriesStyle(palette, 1).color, symbol: "diamond", size: 12 },
    });
  }
  if (chosen !== undefined) {
    data.push({
      type: "scatter",
      mode: "markers",
      name: `looked at: number ${(input.chosen ?? 0) + 1}`,
      x: [x(chosen)],
      y: [y(chosen)],
      hovertemplate,
      marker: { color: palette.ink, symbol: "star-diamond", size: 14, line: { color: palette.sheet, width: 1.5 } },
    });
  }
  const all = [...front, ...beaten];
  const withBaseline = (own: number[], index: number) =>
    baseline !== null && byGoals ? [...own, baseline.goals[index]] : own;
  return {
    key: "puck-front",
    title: "Trade-off",
    caption:
      "Each point is a puck inside the rules with its core sized for the wanted mass. Members of the front are those that no other found puck beats in every goal; best values, bands are in the table of the front.",
    data,
    layout: figureLayout(
      palette,
      { title: `${xColumn.label} (${xColumn.unit})`, values: withBaseline(all.map(x), 0) },
      { title: `${yColumn.label} (${yColumn.unit})`, values: withBaseline(all.map(y), 1) },
    ),
    table: {
      columns: ["puck", ...[...variables, ...goals].map(({ label, unit }) => `${label}, ${unit}`)],
      rows: [
        ...front.map((point, i) => [`front ${i + 1}`, ...point.variables, ...point.goals]),
        ...beaten.map((point) => ["beaten", ...point.variables, ...point.goals]),
      ],
    },
  };
}
