import type { Data } from "plotly.js-dist-min";
import { type Palette, seriesStyle } from "../style/palette";
import type { CurveGroup } from "./curveRow";
import { figureLayout, type PlotFigure } from "./plotFigure";

/** Strouhal number of the vortex street over Reynolds number. */
export function strouhalFigure(curves: readonly CurveGroup[], palette: Palette): PlotFigure {
  const data: Data[] = [];
  const rows: (string | number | null)[][] = [];
  curves.forEach((curve, i) => {
    const style = seriesStyle(palette, i);
    const used = curve.rows.filter((row) => row.converged && row.strouhal !== null);
    data.push({
      type: "scatter",
      mode: used.length > 24 ? "lines" : "lines+markers",
      name: curve.name,
      x: used.map((row) => row.reynolds),
      y: used.map((row) => row.strouhal),
      hovertemplate: "Re %{x:.3g}<br>S %{y:.3f}<extra>%{fullData.name}</extra>",
      line: { color: style.color, dash: style.dash, width: 2.5 },
      marker: { color: style.color, symbol: style.symbol, size: 7 },
    });
    for (const row of used) rows.push([curve.name, row.reynolds, row.strouhal]);
  });
  return {
    key: "strouhal",
    title: "Vortex shedding",
    caption: "Strouhal number of the wake's vortex street, shedding frequency times reference width over stream speed.",
    data,
    layout: figureLayout(
      palette,
      { title: "Reynolds number Re (–)", logarithmic: true, values: rows.map((row) => row[1] as number) },
      { title: "Strouhal number f D / U (–)", values: rows.map((row) => row[2] as number), fromZero: true },
    ),
    table: { columns: ["curve", "Reynolds number", "Strouhal number"], rows },
  };
}
