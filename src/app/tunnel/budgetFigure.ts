import type { Data } from "plotly.js-dist-min";
import type { SpeedDirection } from "../../../shared/jobs/tunnel/predictedDrag";
import type { TunnelPoint } from "../../../shared/jobs/tunnel/tunnelResult";
import { figureLayout, type PlotFigure, withOpacity } from "../plots/plotFigure";
import { type Palette, seriesStyle } from "../style/palette";

/** Parts that are drawn by themselves; the rest goes together. */
const drawnParts = 5;

/** Parts of the variance of the drag coefficient over the speed, one on top of the other; the table has every one. */
export function budgetFigure(points: readonly TunnelPoint[], direction: SpeedDirection, palette: Palette): PlotFigure {
  const own = points.filter((point) => point.direction === direction);
  const keys = own[0]?.firstOrder.parts.map(({ key }) => key) ?? [];
  const shares = keys.map((key) => ({
    key,
    name: partName(own, key),
    values: own.map(({ firstOrder }) => 100 * (firstOrder.parts.find((part) => part.key === key)?.share ?? 0)),
  }));
  const ranked = shares
    .filter(({ values }) => values.some((value) => value > 0))
    .sort((a, b) => total(b.values) - total(a.values));
  const rest = ranked.slice(drawnParts);
  const drawn = [
    ...ranked.slice(0, drawnParts),
    ...(rest.length === 0
      ? []
      : [
          {
            key: "rest",
            name: `${rest.length} smaller parts`,
            values: own.map((_, i) => total(rest.map(({ values }) => values[i]))),
          },
        ]),
  ];
  const correlations = own.map(({ firstOrder }) => 100 * firstOrder.correlationShare);
  const x = own.map(({ speedMetresPerSecond }) => speedMetresPerSecond);
  const data = drawn.map(({ name, values }, i): Data => {
    const style = seriesStyle(palette, i);
    return {
      type: "scatter",
      mode: "lines+markers",
      stackgroup: "shares",
      name,
      x,
      y: values,
      hovertemplate: "U %{x:.3g} m/s<br>%{y:.1f} %<extra>%{fullData.name}</extra>",
      line: { color: style.color, dash: style.dash, width: 2 },
      marker: { color: style.color, symbol: style.symbol, size: 6 },
      fillcolor: withOpacity(style.color, 0.25),
    } as Data;
  });
  return {
    key: `tunnel-budget-${direction}`,
    title: `Where the uncertainty comes from, speed ${direction}`,
    caption: "Parts of the variance of Cd (JCGM 100:2008), stacked: they add up to 100 %, correlations included.",
    data,
    layout: figureLayout(
      palette,
      { title: "speed U (m/s)", values: x },
      { title: "share of the variance (%)", values: [0, 100], fromZero: true },
    ),
    table: {
      columns: [
        "U (m/s)",
        "standard uncertainty of Cd",
        ...ranked.map(({ name }) => `${name} (%)`),
        "correlations (%)",
      ],
      rows: own.map((point, i) => [
        point.speedMetresPerSecond,
        point.firstOrder.combinedStandardUncertainty,
        ...ranked.map(({ values }) => values[i]),
        correlations[i],
      ]),
    },
  };
}

function partName(points: readonly TunnelPoint[], key: string): string {
  if (key === "repeatability") return "scatter of repeats";
  return points[0]?.firstOrder.parts.find((part) => part.key === key)?.name ?? key;
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
