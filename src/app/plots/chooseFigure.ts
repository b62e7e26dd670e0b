import type { ChoiceResult } from "../../../shared/jobs/choice/choiceResult";
import type { CostResult } from "../../../shared/jobs/cost/costResult";
import type { Palette } from "../style/palette";
import { figureLayout, type PlotFigure } from "./plotFigure";
import { puckStyle } from "./puckStyle";

/** Probability of every candidate to be first, and of every further rank, as bars. */
export function choiceFigure({ candidates }: ChoiceResult, palette: Palette): PlotFigure {
  const ranks = candidates.map((_, rank) => rank);
  const layout = figureLayout(
    palette,
    { title: "Probability, %", values: [0, 100] },
    { title: "", values: [-0.5, candidates.length - 0.5] },
  );
  return {
    key: "choice",
    title: "First, second and further ranks",
    caption:
      "Share of all weights allowed and all draws in which a candidate has each rank; the strongest colour is the first rank.",
    data: ranks.map((rank) => ({
      type: "bar",
      orientation: "h",
      name: rank === 0 ? "first" : `rank ${rank + 1}`,
      y: candidates.map(({ name }) => name),
      x: candidates.map(({ rankProbabilities }) => 100 * rankProbabilities[rank]),
      marker: { color: puckStyle(palette, 0).color, opacity: 1 - (0.85 * rank) / Math.max(1, candidates.length - 1) },
      hovertemplate: `%{y}, ${rank === 0 ? "first" : `rank ${rank + 1}`}: %{x:.0f} %<extra></extra>`,
    })),
    layout: {
      ...layout,
      barmode: "stack",
      yaxis: { ...layout.yaxis, type: "category", range: undefined, autorange: "reversed", automargin: true },
    },
    table: {
      columns: ["candidate", ...ranks.map((rank) => `rank ${rank + 1}, %`)],
      rows: candidates.map(({ name, rankProbabilities }) => [name, ...rankProbabilities.map((share) => 100 * share)]),
    },
  };
}

/** Unit cost over the size of a batch, with its bands. */
export function costFigure({ pucks, currency }: CostResult, palette: Palette): PlotFigure {
  const known = pucks.filter(({ batches }) => batches.length > 0);
  const sizes = known.flatMap(({ batches }) => batches.map(({ batchSize }) => batchSize));
  const costs = known.flatMap(({ batches }) => batches.flatMap(({ unitCost }) => [unitCost.low, unitCost.high]));
  return {
    key: "cost",
    title: "Unit cost over the batch",
    caption: `Cost of an accepted puck in ${currency}, expected value with 5 % to 95 % of the draws.`,
    data: known.map(({ name, batches }, i) => {
      const { color, dash, symbol } = puckStyle(palette, i);
      return {
        type: "scatter",
        mode: "lines+markers",
        name,
        x: batches.map(({ batchSize }) => batchSize),
        y: batches.map(({ unitCost }) => unitCost.expected),
        error_y: {
          type: "data",
          symmetric: false,
          array: batches.map(({ unitCost }) => unitCost.high - unitCost.expected),
          arrayminus: batches.map(({ unitCost }) => unitCost.expected - unitCost.low),
          color,
          thickness: 1,
        },
        line: { color, dash },
        marker: { color, symbol },
      };
    }),
    layout: figureLayout(
      palette,
      { title: "Pucks of a batch", logarithmic: true, values: sizes },
      { title: `Cost of a puck, ${currency}`, values: costs, fromZero: true },
    ),
    table: {
      columns: ["puck", "batch", `low, ${currency}`, `expected, ${currency}`, `high, ${currency}`],
      rows: known.flatMap(({ name, batches }) =>
        batches.map(({ batchSize, unitCost }) => [name, batchSize, unitCost.low, unitCost.expected, unitCost.high]),
      ),
    },
  };
}
