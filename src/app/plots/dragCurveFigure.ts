import type { Data } from "plotly.js-dist-min";
import type { PublishedDragCurve } from "../../../shared/engine/reference/smoothCylinderCurve";
import { regimeInWords } from "../../../shared/engine/section/regimeInWords";
import { type Palette, seriesStyle } from "../style/palette";
import type { CurveGroup, CurveRow } from "./curveRow";
import { figureLayout, type PlotFigure, withOpacity } from "./plotFigure";

/** The condition that is being worked on, marked on the curve. */
export interface WorkingPoint {
  readonly name: string;
  readonly reynolds: number;
  readonly dragCoefficient: number;
}

export interface DragCurveInput {
  readonly curves: readonly CurveGroup[];
  readonly published: readonly PublishedDragCurve[];
  readonly workingPoint: WorkingPoint | null;
}

/** Drag coefficient over Reynolds number: computed curves with their bands, published points, the working point. */
export function dragCurveFigure({ curves, published, workingPoint }: DragCurveInput, palette: Palette): PlotFigure {
  const shown = curves.map((curve) => ({ name: curve.name, rows: curve.rows.filter(hasDrag) }));
  const data: Data[] = [];
  shown.forEach((curve, i) => {
    const style = seriesStyle(palette, i);
    const band = curve.rows.filter(hasBand);
    if (band.length > 1) data.push(bandTrace(curve.name, band, style.color));
    data.push({
      type: "scatter",
      mode: curve.rows.length > 24 ? "lines" : "lines+markers",
      name: curve.name,
      x: curve.rows.map((row) => row.reynolds),
      y: curve.rows.map((row) => row.dragCoefficient),
      text: curve.rows.map((row) => regimeInWords(row) ?? ""),
      hovertemplate: "Re %{x:.3g}<br>Cd %{y:.3f}<br>%{text}<extra>%{fullData.name}</extra>",
      line: { color: style.color, dash: style.dash, width: 2.5 },
      marker: { color: style.color, symbol: style.symbol, size: 7 },
    });
    const unsettled = curve.rows.filter((row) => row.settled === false);
    if (unsettled.length > 0) data.push(unsettledTrace(curve.name, unsettled, style.color));
  });
  published.forEach((curve, i) => {
    data.push({
      type: "scatter",
      mode: "markers",
      name: `smooth cylinder: ${curve.name}`,
      x: inRange(curve, shown).map(([reynolds]) => reynolds),
      y: inRange(curve, shown).map(([, drag]) => drag),
      hovertemplate: "Re %{x:.3g}<br>Cd %{y:.3f}<extra>%{fullData.name}</extra>",
      marker: {
        color: palette.published[i % palette.published.length],
        symbol: i === 0 ? "circle-open" : "square-open",
        size: 8,
        line: { width: 1.6 },
      },
    });
  });
  if (workingPoint) {
    data.push({
      type: "scatter",
      mode: "markers",
      name: `working point, ${workingPoint.name}`,
      x: [workingPoint.reynolds],
      y: [workingPoint.dragCoefficient],
      hovertemplate: "Re %{x:.3g}<br>Cd %{y:.3f}<extra>%{fullData.name}</extra>",
      marker: { color: palette.ink, symbol: "star-diamond", size: 13, line: { color: palette.sheet, width: 1.5 } },
    });
  }
  const rows: (string | number | null)[][] = [
    ...shown.flatMap((curve) =>
      curve.rows.map((row) => [
        curve.name,
        row.reynolds,
        row.dragCoefficient,
        row.dragCoefficientLow ?? null,
        row.dragCoefficientHigh ?? null,
        regimeInWords(row),
      ]),
    ),
    ...published.flatMap((curve) =>
      inRange(curve, shown).map(([reynolds, drag]) => [curve.name, reynolds, drag, null, null, null]),
    ),
  ];
  return {
    key: "drag-curve",
    title: "Drag over Reynolds number",
    caption:
      "Cd per unit span on the reference area D x span, Re = U D / ν on the same D, the extent across the stream. The published points belong to a smooth round cylinder, whatever section is computed.",
    data,
    layout: figureLayout(
      palette,
      {
        title: "Reynolds number Re (–)",
        logarithmic: true,
        values: [...rows.map((row) => row[1] as number), workingPoint?.reynolds ?? null],
      },
      {
        title: "drag coefficient Cd (–)",
        values: rows.flatMap((row) => [row[2], row[4]] as (number | null)[]),
        fromZero: true,
      },
    ),
    table: {
      columns: ["curve", "Reynolds number", "drag coefficient", "lower bound", "upper bound", "regime"],
      rows,
    },
  };
}

function hasDrag(row: CurveRow): boolean {
  return row.converged && row.dragCoefficient !== null && Number.isFinite(row.dragCoefficient);
}

function hasBand(row: CurveRow): boolean {
  return (
    Number.isFinite(row.dragCoefficientLow ?? Number.NaN) && Number.isFinite(row.dragCoefficientHigh ?? Number.NaN)
  );
}

/** Published points from a decade below the computed range to a decade above; from 1e4 up when nothing is computed. */
function inRange(curve: PublishedDragCurve, shown: readonly CurveGroup[]): (readonly [number, number])[] {
  const all = shown.flatMap((one) => one.rows.map((row) => row.reynolds));
  const lowest = all.length > 0 ? Math.max(1e3, Math.min(...all) / 10) : 1e4;
  return curve.points.filter(([reynolds]) => reynolds >= lowest);
}

/** Crosses over the points that are no answer to rely on. */
function unsettledTrace(name: string, rows: readonly CurveRow[], color: string): Data {
  return {
    type: "scatter",
    mode: "markers",
    name: `${name}, not settled`,
    x: rows.map((row) => row.reynolds),
    y: rows.map((row) => row.dragCoefficient),
    hovertemplate: "Re %{x:.3g}<br>Cd %{y:.3f}, not settled<extra>%{fullData.name}</extra>",
    marker: { color, symbol: "x-thin-open", size: 11, line: { width: 2 } },
  };
}

function bandTrace(name: string, rows: readonly CurveRow[], color: string): Data {
  const forth = rows.map((row) => row.reynolds);
  return {
    type: "scatter",
    mode: "lines",
    name: `${name}, band`,
    x: [...forth, ...[...forth].reverse()],
    y: [
      ...rows.map((row) => row.dragCoefficientHigh ?? null),
      ...rows.map((row) => row.dragCoefficientLow ?? null).reverse(),
    ],
    fill: "toself",
    fillcolor: withOpacity(color, 0.16),
    line: { width: 0 },
    hoverinfo: "skip",
    showlegend: false,
  };
}
