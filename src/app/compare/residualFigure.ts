import type { Data } from "plotly.js-dist-min";
import type { ComparisonRow } from "../../../shared/jobs/evidence/comparisonResult";
import type { SpeedDirection } from "../../../shared/jobs/evidence/measurement";
import { figureLayout, type PlotFigure } from "../plots/plotFigure";
import { type Palette, seriesStyle } from "../style/palette";
import { directionWords, type OverlayInput, sorted } from "./overlayFigure";

const directions: readonly (SpeedDirection | null)[] = ["rising", "falling", null];

/** Normalised errors over Reynolds number: between -1 and 1 measurement and prediction agree. */
export function residualFigure({ result, shown }: OverlayInput, palette: Palette): PlotFigure {
  const { rows } = result;
  const reynolds = rows.map((row) => row.reynolds);
  const ends = [Math.min(...reynolds), Math.max(...reynolds)];
  const data: Data[] = [-1, 0, 1].map((level) => ({
    type: "scatter",
    mode: "lines",
    name: level === 0 ? "no residual" : `En ${level}`,
    x: ends,
    y: [level, level],
    line: { color: palette.softInk, width: 1.2, dash: level === 0 ? "solid" : "dash" },
    hoverinfo: "skip",
    showlegend: false,
  }));
  const [, measuredStyle, shownStyle] = [0, 1, 2].map((i) => seriesStyle(palette, i));
  for (const direction of directions) {
    const own = sorted(rows.filter((row) => row.direction === direction && row.normalisedError !== null));
    if (own.length === 0) continue;
    data.push({
      type: "scatter",
      mode: "markers",
      name: `stated settings${directionWords(direction, rows)}`,
      x: own.map((row) => row.reynolds),
      y: own.map((row) => row.normalisedError),
      text: own.map(hoverText),
      hovertemplate: "Re %{x:.3g}<br>En %{y:.2f}<br>%{text}<extra>%{fullData.name}</extra>",
      marker: {
        color: measuredStyle.color,
        symbol: direction === "falling" ? "square-open" : "square",
        size: 8,
        line: { width: 1.6, color: measuredStyle.color },
      },
    });
  }
  if (shown !== null) {
    const own = sorted(shown.rows.filter((row) => row.normalisedError !== null));
    data.push({
      type: "scatter",
      mode: "markers",
      name: `with ${shown.label}`,
      x: own.map((row) => row.reynolds),
      y: own.map((row) => row.normalisedError),
      text: own.map(hoverText),
      hovertemplate: "Re %{x:.3g}<br>En %{y:.2f}<br>%{text}<extra>%{fullData.name}</extra>",
      marker: { color: shownStyle.color, symbol: shownStyle.symbol, size: 8 },
    });
  }
  const values = [...rows, ...(shown?.rows ?? [])].map((row) => row.normalisedError);
  return {
    key: "measured-residuals",
    title: `Residuals, ${result.name}`,
    caption:
      "Normalised error En: measured - predicted Cd over the root of both expanded uncertainties squared (k = 2), ISO/IEC 17043. Between the dashed lines the two agree.",
    data,
    layout: figureLayout(
      palette,
      { title: "Reynolds number Re (–)", logarithmic: true, values: reynolds },
      { title: "normalised error En (–)", values: [...values, -1.2, 1.2] },
    ),
    table: {
      columns: [
        "Reynolds number",
        "direction of speed",
        "residual in Cd",
        "residual, % of the prediction",
        "normalised error",
        "beyond both bands",
        ...(shown === null ? [] : [`normalised error with ${shown.label}`]),
      ],
      rows: rows.map((row, i) => [
        row.reynolds,
        row.direction,
        row.residual,
        row.residualPercent,
        row.normalisedError,
        row.exceedsBothBands === null ? null : row.exceedsBothBands ? "yes" : "no",
        ...(shown === null ? [] : [shown.rows[i]?.normalisedError ?? null]),
      ]),
    },
  };
}

function hoverText(row: ComparisonRow): string {
  return row.residualPercent === null ? "" : `${row.residualPercent.toFixed(1)} % of the prediction`;
}
