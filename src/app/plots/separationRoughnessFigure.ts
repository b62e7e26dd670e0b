import type { Data } from "plotly.js-dist-min";
import { regimeInWords } from "../../../shared/engine/section/regimeInWords";
import { type Palette, seriesStyle } from "../style/palette";
import { type CurveGroup, roughnessLabel } from "./curveRow";
import { figureLayout, type PlotFigure } from "./plotFigure";

/**
 * Separation angle against relative roughness. A logarithmic axis has no zero, so smooth rows stand at the left edge,
 * half a decade below the finest roughness, with a tick that says 0.
 */
export function separationRoughnessFigure(curves: readonly CurveGroup[], palette: Palette): PlotFigure {
  const positive = curves
    .flatMap((curve) => curve.rows.map((row) => row.sandGrainRoughnessRatio))
    .filter((ks) => ks > 0);
  const finest = positive.length > 0 ? Math.min(...positive) : 1e-5;
  const coarsest = positive.length > 0 ? Math.max(...positive) : 1e-2;
  const smoothAt = finest / Math.sqrt(10);
  const place = (ratio: number) => (ratio > 0 ? ratio : smoothAt);
  const data: Data[] = [];
  const rows: (string | number | null)[][] = [];
  curves.forEach((curve, i) => {
    const style = seriesStyle(palette, i);
    const used = curve.rows.filter((row) => row.converged && row.separationAngleUpperDegrees !== null);
    data.push({
      type: "scatter",
      mode: "lines+markers",
      name: curve.name,
      x: used.map((row) => place(row.sandGrainRoughnessRatio)),
      y: used.map((row) => row.separationAngleUpperDegrees),
      text: used.map((row) => `${roughnessLabel(row.sandGrainRoughnessRatio)}<br>${regimeInWords(row) ?? ""}`),
      hovertemplate: "%{text}<br>separation at %{y:.1f}°<extra>%{fullData.name}</extra>",
      line: { color: style.color, dash: style.dash, width: 2.5 },
      marker: { color: style.color, symbol: style.symbol, size: 8 },
    });
    for (const row of used) {
      rows.push([
        curve.name,
        row.sandGrainRoughnessRatio,
        row.separationAngleUpperDegrees,
        row.separationAngleLowerDegrees,
        regimeInWords(row),
      ]);
    }
  });
  const decades = wholeDecades(finest, coarsest);
  const layout = figureLayout(
    palette,
    {
      title: "relative roughness ks / D (–)",
      logarithmic: true,
      values: rows.map((row) => place(row[1] as number)),
    },
    { title: "separation, upper side (degrees)", values: rows.map((row) => row[2] as number) },
  );
  return {
    key: "separation-roughness",
    title: "Separation against roughness",
    caption:
      "Where the boundary layer leaves the upper side, over the equivalent sand-grain roughness on the reference width D. The mark 0 is the smooth wall. The curves have no bands: only the drag coefficient has one, from its errors against published values.",
    data,
    layout: {
      ...layout,
      xaxis: {
        ...layout.xaxis,
        dtick: undefined,
        tickvals: [smoothAt, ...decades],
        ticktext: ["0", ...decades.map((at) => `10<sup>${Math.round(Math.log10(at))}</sup>`)],
      },
    },
    table: {
      columns: ["curve", "ks / D", "upper separation (degrees)", "lower separation (degrees)", "regime"],
      rows,
    },
  };
}

function wholeDecades(low: number, high: number): number[] {
  const first = Math.ceil(Math.log10(low) - 1e-9);
  const last = Math.floor(Math.log10(high) + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => 10 ** (first + i));
}
