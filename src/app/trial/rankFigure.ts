import type { RankingResult, TrialResult } from "../../../shared/jobs/trial/trialResult";
import { figureLayout, type PlotFigure } from "../plots/plotFigure";
import { type Palette, seriesStyle } from "../style/palette";
import { puckLabel, rankingTitle } from "./puckLabel";

/** Strengths of the pucks with their bands, the most liked on top. */
export function rankFigure(
  result: TrialResult,
  ranking: RankingResult,
  bandPercent: number,
  palette: Palette,
): PlotFigure {
  // From below upwards.
  const rows = [...ranking.standings].reverse().filter(({ strength }) => strength !== null);
  const labels = rows.map(({ code }) => puckLabel(result, code));
  const strengths = rows.map(({ strength }) => strength ?? 0);
  const style = seriesStyle(palette, 0);
  const layout = figureLayout(
    palette,
    { title: "strength, share of the sum (–)", values: [0, ...rows.map((row) => row.strengthHigh)], fromZero: true },
    { title: "", values: [-0.4, rows.length - 0.3] },
  );
  return {
    key: "trial-ranking",
    title: `Liking, ${rankingTitle(ranking.activity)}`,
    caption: `Strengths by pairs (Bradley-Terry, equal scores by Davidson); bars hold ${bandPercent} % of the panels drawn from the players. Overlapping bars are no test: see the pairs.`,
    data: [
      {
        type: "scatter",
        mode: "markers",
        name: `strength, ${bandPercent} % band`,
        showlegend: false,
        x: strengths,
        y: rows.map((_, i) => i),
        text: labels,
        error_x: {
          type: "data",
          symmetric: false,
          array: rows.map((row, i) => (row.strengthHigh ?? strengths[i]) - strengths[i]),
          arrayminus: rows.map((row, i) => strengths[i] - (row.strengthLow ?? strengths[i])),
          color: style.color,
          thickness: 2,
          width: 6,
          visible: true,
        },
        hovertemplate: "%{text}<br>strength %{x:.3f}<extra></extra>",
        marker: { color: style.color, symbol: style.symbol, size: 10 },
      },
    ],
    layout: {
      ...layout,
      margin: { ...layout.margin, l: 14 },
      yaxis: { ...layout.yaxis, showticklabels: false, ticks: "", showgrid: false, zeroline: false },
      // Above its bar each: names are too long to stand beside the axis on a phone.
      annotations: labels.map((text, i) => ({
        xref: "paper",
        x: 0.01,
        y: i + 0.36,
        text,
        showarrow: false,
        xanchor: "left",
        font: { size: 13, color: palette.ink },
      })),
    },
    table: {
      columns: [
        "puck",
        "strength",
        "lower end of the band",
        "upper end",
        "mean rank, 1 best",
        "first in, share of panels",
      ],
      rows: [...rows]
        .reverse()
        .map((row) => [
          puckLabel(result, row.code),
          row.strength,
          row.strengthLow,
          row.strengthHigh,
          row.meanRank,
          row.firstShare,
        ]),
    },
  };
}
