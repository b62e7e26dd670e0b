import type { Data } from "plotly.js-dist-min";
import type { ResultRow } from "../../../shared/engine/section/resultRow";
import { type Palette, seriesStyle } from "../style/palette";
import { figureLayout, type PlotFigure } from "./plotFigure";

/** What a sweep can plot. */
export const sweepOutputs = {
  dragCoefficient: { label: "drag coefficient Cd (–)", of: (row: ResultRow) => row.dragCoefficient },
  dragPerSpan: { label: "drag per metre of span (N/m)", of: (row: ResultRow) => row.dragPerSpanNewtonsPerMetre },
  strouhal: { label: "Strouhal number S (–)", of: (row: ResultRow) => row.strouhal },
  basePressure: { label: "base pressure Cpb (–)", of: (row: ResultRow) => row.basePressureCoefficient },
  separation: { label: "separation, upper side (degrees)", of: (row: ResultRow) => row.separationAngleUpperDegrees },
  lift: { label: "lift coefficient Cl (–)", of: (row: ResultRow) => row.liftCoefficient },
} as const;

export type SweepOutput = keyof typeof sweepOutputs;

/** One swept input: axis title with unit, and its values in that unit. */
export interface SweepAxis {
  readonly title: string;
  readonly values: readonly number[];
}

/**
 * A sweep as a line (one input) or a contour map (two inputs).
 * @param rows  by index of the first axis, then of the second
 */
export function sweepFigure(
  axes: readonly SweepAxis[],
  rows: readonly (readonly (ResultRow | null)[])[],
  output: SweepOutput,
  palette: Palette,
): PlotFigure {
  const { label, of } = sweepOutputs[output];
  const value = (i: number, j: number): number | null => {
    const row = rows[i]?.[j];
    return row ? of(row) : null;
  };
  const [first, second] = axes;
  const style = seriesStyle(palette, 0);
  const data: Data[] =
    second === undefined
      ? [
          {
            type: "scatter",
            mode: "lines+markers",
            name: label,
            x: [...first.values],
            y: first.values.map((_, i) => value(i, 0)),
            connectgaps: false,
            line: { color: style.color, width: 2.5 },
            marker: { color: style.color, size: 6 },
            showlegend: false,
          },
        ]
      : [
          {
            type: "contour",
            name: label,
            x: [...first.values],
            y: [...second.values],
            z: second.values.map((_, j) => first.values.map((__, i) => value(i, j))),
            colorscale: contourScale(palette),
            contours: { showlabels: true, labelfont: { color: palette.ink, size: 12 } },
            colorbar: { title: { text: label, side: "right" }, thickness: 14, outlinewidth: 0 },
            hovertemplate: "%{x:.4g}, %{y:.4g}<br>%{z:.4g}<extra></extra>",
            showlegend: false,
          } as Data,
        ];
  const layout = figureLayout(
    palette,
    { title: first.title, values: first.values },
    second === undefined
      ? { title: label, values: first.values.map((_, i) => value(i, 0)) }
      : { title: second.title, values: second.values },
  );
  return {
    key: "sweep",
    title: second === undefined ? `${label} over ${first.title}` : `${label}: contour map`,
    caption:
      "Everything else as in the design when the sweep was started; rising branch. Coefficients on the reference area D x span, with D the extent across the stream of each section.",
    data,
    layout: second === undefined ? layout : { ...layout, margin: { ...layout.margin, r: 90 } },
    table: {
      columns: [...axes.map((axis) => axis.title), label, "regime"],
      rows: first.values.flatMap((a, i) =>
        (second?.values ?? [Number.NaN]).map((b, j) => [
          ...(second === undefined ? [a] : [a, b]),
          value(i, j),
          rows[i]?.[j]?.regime ?? null,
        ]),
      ),
    },
  };
}

/** Light to dark in one hue, so that it reads without colour vision. */
function contourScale(palette: Palette): [number, string][] {
  return [
    [0, palette.sheet],
    [1, seriesStyle(palette, 0).color],
  ];
}
