import type { PowerResult } from "../../../shared/jobs/trial/trialResult";
import { figureLayout, type PlotFigure } from "../plots/plotFigure";
import { type Palette, seriesStyle } from "../style/palette";

/** Half the width of a 95 % interval, in standard errors. */
const errors95 = 1.96;

/** Power over the number of players, with the error of the simulation. */
export function powerFigure({ curve, simulations, wantedPower }: PowerResult, palette: Palette): PlotFigure {
  const players = curve.map(({ playerCount }) => playerCount);
  const [power, first] = [seriesStyle(palette, 0), seriesStyle(palette, 1)];
  return {
    key: "trial-power",
    title: "Power over the number of players",
    caption: `Simulated: ${simulations} trials for each number; bars are ± 1.96 standard errors of the simulation. It is as good as the assumed likings and spreads.`,
    data: [
      {
        type: "scatter",
        mode: "lines",
        name: "wanted",
        x: [0, Math.max(...players)],
        y: [wantedPower, wantedPower],
        line: { color: palette.softInk, width: 1.4, dash: "dash" },
        hoverinfo: "skip",
      },
      {
        type: "scatter",
        mode: "lines+markers",
        name: "a difference is shown",
        x: players,
        y: curve.map((point) => point.power),
        error_y: {
          type: "data",
          array: curve.map(({ standardError }) => errors95 * standardError),
          color: power.color,
          thickness: 1.5,
          width: 4,
          visible: true,
        },
        line: { color: power.color, dash: power.dash, width: 2.2 },
        marker: { color: power.color, symbol: power.symbol, size: 8 },
        hovertemplate: "%{x} players: %{y:.3f}<extra>%{fullData.name}</extra>",
      },
      {
        type: "scatter",
        mode: "lines+markers",
        name: "the best puck comes first",
        x: players,
        y: curve.map(({ bestFirstShare }) => bestFirstShare),
        line: { color: first.color, dash: first.dash, width: 2.2 },
        marker: { color: first.color, symbol: first.symbol, size: 8 },
        hovertemplate: "%{x} players: %{y:.3f}<extra>%{fullData.name}</extra>",
      },
    ],
    layout: figureLayout(
      palette,
      { title: "players (–)", values: [0, ...players], fromZero: true },
      { title: "share of trials (–)", values: [0, 1], fromZero: true },
    ),
    table: {
      columns: ["players", "power", "standard error", "the best puck comes first"],
      rows: curve.map((point) => [point.playerCount, point.power, point.standardError, point.bestFirstShare]),
    },
  };
}
