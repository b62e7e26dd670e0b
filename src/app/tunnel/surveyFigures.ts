import type { TapSurvey } from "../../../shared/jobs/tunnel/pressureTaps";
import type { WakeTraverse } from "../../../shared/jobs/tunnel/wakeSurvey";
import { figureLayout, type PlotFigure } from "../plots/plotFigure";
import { type Palette, seriesStyle } from "../style/palette";

/** Pressures across a wake over the dynamic pressure of the stream. */
export function wakeFigure(
  { position, totalPressure, staticPressure, dynamicPressure }: WakeTraverse,
  palette: Palette,
): PlotFigure {
  const [totalStyle, staticStyle] = [0, 1].map((i) => seriesStyle(palette, i));
  const x = Array.from(position, (y) => 1000 * y);
  const over = (values: Readonly<Float64Array>) => Array.from(values, (value) => value / dynamicPressure);
  const g = over(totalPressure);
  const p = staticPressure === null ? null : over(staticPressure);
  const trace = (name: string, y: number[], style: typeof totalStyle) => ({
    type: "scatter" as const,
    mode: "lines+markers" as const,
    name,
    x,
    y,
    hovertemplate: "y %{x:.4g} mm<br>%{y:.4f}<extra>%{fullData.name}</extra>",
    line: { color: style.color, dash: style.dash, width: 2 },
    marker: { color: style.color, symbol: style.symbol, size: 5 },
  });
  return {
    key: "tunnel-wake",
    title: "Pressures across the wake",
    caption: "Over the static pressure of the stream, on its dynamic pressure: 1 is the undisturbed stream.",
    data: [trace("total pressure", g, totalStyle), ...(p === null ? [] : [trace("static pressure", p, staticStyle)])],
    layout: figureLayout(
      palette,
      { title: "position across the stream (mm)", values: x },
      { title: "pressure / dynamic pressure (–)", values: [...g, ...(p ?? [])], fromZero: true },
    ),
    table: {
      columns: ["position (mm)", "total pressure / q", "static pressure / q"],
      rows: x.map((each, i) => [each, g[i], p?.[i] ?? null]),
    },
  };
}

/** Measured and predicted pressure coefficients along the contour. */
export function tapFigure({ taps }: TapSurvey, palette: Palette): PlotFigure {
  const [predictedStyle, measuredStyle] = [0, 1].map((i) => seriesStyle(palette, i));
  const x = taps.map(({ arcShare }) => 100 * arcShare);
  const isPredicted = taps.some(({ predicted }) => predicted !== null);
  return {
    key: "tunnel-taps",
    title: "Pressure taps against the prediction",
    caption:
      "Arc counter-clockwise from the nose: the lower side to 50 %, then the upper one. Bars: expanded uncertainty.",
    data: [
      ...(isPredicted
        ? [
            {
              type: "scatter" as const,
              mode: "lines" as const,
              name: "predicted at the taps",
              x,
              y: taps.map(({ predicted }) => predicted),
              hovertemplate: "arc %{x:.1f} %<br>Cp %{y:.3f}<extra>%{fullData.name}</extra>",
              line: { color: predictedStyle.color, width: 2.5 },
            },
          ]
        : []),
      {
        type: "scatter",
        mode: "markers",
        name: "measured",
        x,
        y: taps.map(({ measured }) => measured),
        text: taps.map(({ name }) => name),
        error_y: {
          type: "data",
          array: taps.map(({ expandedUncertainty }) => expandedUncertainty),
          color: measuredStyle.color,
          thickness: 1.5,
          width: 3,
          visible: true,
        },
        hovertemplate: "%{text}, arc %{x:.1f} %<br>Cp %{y:.3f}<extra>%{fullData.name}</extra>",
        marker: { color: measuredStyle.color, symbol: measuredStyle.symbol, size: 7 },
      },
    ],
    layout: figureLayout(
      palette,
      { title: "arc / perimeter (%)", values: [0, 100] },
      {
        title: "pressure coefficient Cp (–)",
        values: taps.flatMap(({ measured, predicted }) => [measured, predicted]),
      },
    ),
    table: {
      columns: ["tap", "arc / perimeter (%)", "Cp", "expanded uncertainty", "predicted Cp", "residual"],
      rows: taps.map((tap, i) => [tap.name, x[i], tap.measured, tap.expandedUncertainty, tap.predicted, tap.residual]),
    },
  };
}
