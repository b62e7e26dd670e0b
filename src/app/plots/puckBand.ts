import type { Data } from "plotly.js-dist-min";
import { withOpacity } from "./plotFigure";

/** One edge of a band: points in order. */
export interface BandEdge {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** A band between two lines, filled, behind the curve of the same colour and out of the legend. */
export function bandTrace(name: string, low: BandEdge, high: BandEdge, color: string): Data {
  return {
    type: "scatter",
    mode: "lines",
    name: `${name}, band`,
    x: [...high.x, ...[...low.x].reverse()],
    y: [...high.y, ...[...low.y].reverse()],
    fill: "toself",
    fillcolor: withOpacity(color, 0.15),
    line: { width: 0 },
    hoverinfo: "skip",
    showlegend: false,
  };
}
