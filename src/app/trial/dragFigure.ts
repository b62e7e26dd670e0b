import type { DragPreference, TrialResult } from "../../../shared/jobs/trial/trialResult";
import { axisRange, figureLayout, type PlotFigure } from "../plots/plotFigure";
import { type Palette, seriesStyle } from "../style/palette";
import { puckLabel } from "./puckLabel";

/** Mean rank over drag, one point per puck; no line, since so few pucks do not make one. */
export function dragFigure(result: TrialResult, { pucks, meaning }: DragPreference, palette: Palette): PlotFigure {
  const count = result.pucks.length;
  const layout = figureLayout(
    palette,
    { title: "drag", values: pucks.map(({ drag }) => drag) },
    { title: "mean rank (–)", values: [1, count] },
  );
  const [low, high] = axisRange({ title: "", values: [1, count] });
  return {
    key: "trial-drag",
    title: "Drag and liking",
    caption: `${meaning}. Liking is the mean rank over all activities, 1 the most liked, on top.`,
    data: pucks.map(({ code, drag, meanRank }, i) => {
      const style = seriesStyle(palette, i);
      return {
        type: "scatter",
        mode: "markers",
        name: puckLabel(result, code),
        x: [drag],
        y: [meanRank],
        hovertemplate: "drag %{x:.4g}<br>mean rank %{y:.2f}<extra>%{fullData.name}</extra>",
        marker: { color: style.color, symbol: style.symbol, size: 12 },
      };
    }),
    layout: {
      ...layout,
      yaxis: { ...layout.yaxis, range: [high, low] },
    },
    table: {
      columns: ["puck", "drag", "mean rank, 1 best"],
      rows: pucks.map(({ code, drag, meanRank }) => [puckLabel(result, code), drag, meanRank]),
    },
  };
}
