import type { Data } from "plotly.js-dist-min";
import { withOpacity } from "./plotFigure";

/** One edge of a band: points in order. */
export interface BandEdge {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/**
 * A band between two lines, filled, behind the curve of the same colour and out of the legend. It has its curve's name,
 * so that the legend's button hides both.
 * @param count bands in the plot: the more, the fainter each
 */
export function bandTrace(name: string, low: BandEdge, high: BandEdge, color: string, count: number): Data {
  return {
    type: "scatter",
    mode: "lines",
    name,
    x: [...high.x, ...[...low.x].reverse()],
    y: [...high.y, ...[...low.y].reverse()],
    fill: "toself",
    fillcolor: withOpacity(color, count > 3 ? 0.07 : 0.15),
    line: { color: withOpacity(color, 0.55), width: 0.8 },
    hoverinfo: "skip",
    showlegend: false,
  };
}
