import type { Data } from "plotly.js-dist-min";
import type { ComparisonRow, SetResult } from "../../../shared/jobs/evidence/comparisonResult";
import type { SpeedDirection } from "../../../shared/jobs/evidence/measurement";
import { bandWords } from "../plots/bandWords";
import { figureLayout, type PlotFigure, withOpacity } from "../plots/plotFigure";
import { type Palette, seriesStyle } from "../style/palette";

/** A prediction under other settings, laid over the stated one. */
export interface ShownSetting {
  /** For the legend: "Tu 1.8 %". */
  readonly label: string;
  readonly rows: readonly ComparisonRow[];
}

export interface OverlayInput {
  readonly result: Pick<SetResult, "name" | "rows" | "design" | "referenceText" | "shownOn">;
  readonly shown: ShownSetting | null;
}

const directions: readonly (SpeedDirection | null)[] = ["rising", "falling", null];

/** Measured drag coefficients with their bars over the predicted ones with their band. */
export function overlayFigure({ result, shown }: OverlayInput, palette: Palette): PlotFigure {
  const { rows } = result;
  const [predictedStyle, measuredStyle, shownStyle] = [0, 1, 2].map((i) => seriesStyle(palette, i));
  const data: Data[] = [];
  for (const direction of directions) {
    const own = sorted(rows.filter((row) => row.direction === direction));
    const predicted = own.filter((row) => row.predictedDragCoefficient !== null);
    const suffix = directionWords(direction, rows);
    if (predicted.length > 1 && data.length === 0) data.push(bandTrace(sorted(rows), predictedStyle.color));
    if (predicted.length > 0) {
      data.push({
        type: "scatter",
        mode: "lines+markers",
        name: `prediction${suffix}`,
        x: predicted.map((row) => row.reynolds),
        y: predicted.map((row) => row.predictedDragCoefficient),
        text: predicted.map((row) => row.regime ?? ""),
        hovertemplate: "Re %{x:.3g}<br>Cd %{y:.3f}<br>%{text}<extra>%{fullData.name}</extra>",
        line: { color: predictedStyle.color, dash: direction === "falling" ? "dash" : "solid", width: 2.5 },
        marker: { color: predictedStyle.color, symbol: "line-ns-open", size: 6 },
      });
    }
  }
  if (shown !== null) {
    const own = sorted(shown.rows.filter((row) => row.direction !== "falling"));
    data.push({
      type: "scatter",
      mode: "lines+markers",
      name: `prediction with ${shown.label}`,
      x: own.map((row) => row.reynolds),
      y: own.map((row) => row.predictedDragCoefficient),
      hovertemplate: "Re %{x:.3g}<br>Cd %{y:.3f}<extra>%{fullData.name}</extra>",
      line: { color: shownStyle.color, dash: "dot", width: 2.5 },
      marker: { color: shownStyle.color, symbol: shownStyle.symbol, size: 6 },
    });
  }
  for (const direction of directions) {
    const own = sorted(rows.filter((row) => row.direction === direction));
    if (own.length === 0) continue;
    data.push({
      type: "scatter",
      mode: "markers",
      name: `measured${directionWords(direction, rows)}`,
      x: own.map((row) => row.reynolds),
      y: own.map((row) => row.measuredDragCoefficient),
      error_y: {
        type: "data",
        array: own.map((row) => row.measuredExpandedUncertainty ?? 0),
        color: measuredStyle.color,
        thickness: 1.5,
        width: 3,
        visible: true,
      },
      hovertemplate: "Re %{x:.3g}<br>Cd %{y:.3f}<extra>%{fullData.name}</extra>",
      marker: {
        color: measuredStyle.color,
        symbol: direction === "falling" ? "square-open" : "square",
        size: 8,
        line: { width: 1.6, color: measuredStyle.color },
      },
    });
  }
  const highest = (row: ComparisonRow) =>
    Math.max(
      row.measuredDragCoefficient + (row.measuredExpandedUncertainty ?? 0),
      row.predictedHigh ?? 0,
      row.predictedDragCoefficient ?? 0,
    );
  return {
    key: "measured-drag",
    title: `Measured and predicted drag, ${result.name}`,
    caption: `${result.shownOn}. Bars of the measurement: expanded uncertainty, k = 2; band of the prediction: ${bandWords[result.design]}. Stated by the source: ${result.referenceText}.`,
    data,
    layout: figureLayout(
      palette,
      { title: "Reynolds number Re (–)", logarithmic: true, values: rows.map((row) => row.reynolds) },
      { title: "drag coefficient Cd (–)", values: rows.map(highest), fromZero: true },
    ),
    table: {
      columns: [
        "Reynolds number",
        "direction of speed",
        "measured Cd",
        "expanded uncertainty (k = 2)",
        "predicted Cd",
        "lower bound",
        "upper bound",
        "regime",
        ...(shown === null ? [] : [`predicted Cd with ${shown.label}`]),
      ],
      rows: rows.map((row, i) => [
        row.reynolds,
        row.direction,
        row.measuredDragCoefficient,
        row.measuredExpandedUncertainty,
        row.predictedDragCoefficient,
        row.predictedLow,
        row.predictedHigh,
        row.regime,
        ...(shown === null ? [] : [shown.rows[i]?.predictedDragCoefficient ?? null]),
      ]),
    },
  };
}

/** In rising order of Reynolds number. */
export function sorted(rows: readonly ComparisonRow[]): ComparisonRow[] {
  return [...rows].sort((a, b) => a.reynolds - b.reynolds);
}

/** Named only where the set has more than one direction. */
export function directionWords(direction: SpeedDirection | null, rows: readonly ComparisonRow[]): string {
  if (new Set(rows.map((row) => row.direction)).size === 1) return "";
  return direction === null ? "" : `, ${direction} speed`;
}

/** The band of the prediction; where two directions have one Reynolds number, the hull of theirs. */
function bandTrace(rows: readonly ComparisonRow[], color: string): Data {
  const hull = new Map<number, { low: number; high: number }>();
  for (const { reynolds, predictedLow: low, predictedHigh: high } of rows) {
    if (low === null || high === null) continue;
    const known = hull.get(reynolds);
    hull.set(reynolds, {
      low: Math.min(low, known?.low ?? low),
      high: Math.max(high, known?.high ?? high),
    });
  }
  const x = [...hull.keys()];
  const bands = [...hull.values()];
  return {
    type: "scatter",
    mode: "lines",
    name: "prediction, band",
    x: [...x, ...[...x].reverse()],
    y: [...bands.map(({ high }) => high), ...bands.map(({ low }) => low).reverse()],
    fill: "toself",
    fillcolor: withOpacity(color, 0.16),
    line: { width: 0 },
    hoverinfo: "skip",
    showlegend: false,
  };
}
