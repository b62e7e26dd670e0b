import type { Data } from "plotly.js-dist-min";
import { isSealed } from "../../../shared/engine/section/sealedSide";
import type { SectionState } from "../../../shared/engine/solution";
import { type Palette, seriesStyle } from "../style/palette";
import { shortNumber } from "./curveRow";
import { figureLayout, type PlotFigure } from "./plotFigure";
import {
  type PositionMeasure,
  positionAxisTitle,
  rearToRear,
  type SurfacePoints,
  surfacePositions,
} from "./surfacePosition";

/** One solved section as it is overlaid in the surface plots. */
export interface OverlaidState {
  readonly name: string;
  readonly points: SurfacePoints;
  readonly state: SectionState;
  /** Rad, nose up. */
  readonly incidence: number;
  /** m */
  readonly referenceWidth: number;
}

/** Pressure coefficient around the section, both sides in one line, with a mark where each side separates. */
export function pressureFigure(
  overlaid: readonly OverlaidState[],
  measure: PositionMeasure,
  palette: Palette,
): PlotFigure {
  const data: Data[] = [];
  const rows: (string | number)[][] = [];
  overlaid.forEach(({ name, points, state, incidence, referenceWidth }, i) => {
    const style = seriesStyle(palette, i);
    const positions = surfacePositions(points, measure, incidence, referenceWidth);
    const order = rearToRear(positions);
    data.push({
      type: "scatter",
      mode: "lines",
      name,
      x: order.map((node) => positions[node]),
      y: order.map((node) => state.pressureCoefficient[node]),
      hovertemplate: "%{x:.3g}<br>Cp %{y:.3f}<extra>%{fullData.name}</extra>",
      line: { color: style.color, dash: style.dash, width: 2.5 },
    });
    const sides = (["upper", "lower"] as const).filter((side) => !isSealed(state[side]));
    const marks = sides.map((side) => nearestNode(points, state[side].separationContourArc));
    data.push({
      type: "scatter",
      mode: "markers",
      name: `separation, ${name}`,
      x: marks.map((node) => positions[node]),
      y: marks.map((node) => state.pressureCoefficient[node]),
      text: sides,
      hovertemplate: "separation, %{text} side<br>%{x:.3g}<br>Cp %{y:.3f}<extra></extra>",
      marker: { color: palette.sheet, symbol: style.symbol, size: 10, line: { color: style.color, width: 2.5 } },
      showlegend: i === 0,
    });
    for (const node of order) rows.push([name, positions[node], state.pressureCoefficient[node]]);
  });
  return {
    key: "pressure",
    title: "Pressure around the section",
    caption: `Pressure coefficient Cp = (p - p∞) / (ρ U² / 2), both sides; an open mark where the layer separates.${lowest(overlaid)}`,
    data,
    layout: figureLayout(
      palette,
      { title: positionAxisTitle[measure], values: rows.map((row) => row[1] as number) },
      { title: "pressure coefficient Cp (–)", values: rows.map((row) => row[2] as number) },
    ),
    table: {
      columns: ["curve", measure === "angle" ? "angle (degrees)" : "arc / reference width", "pressure coefficient"],
      rows,
    },
  };
}

function lowest(overlaid: readonly OverlaidState[]): string {
  if (overlaid.length !== 1) return "";
  const { state } = overlaid[0];
  return ` Lowest ${shortNumber(state.minimumPressureCoefficient)}, base ${shortNumber(state.basePressureCoefficient)}.`;
}

function nearestNode(points: SurfacePoints, arc: number): number {
  let nearest = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < points.arc.length; i++) {
    const apart = Math.abs(points.arc[i] - arc);
    const distance = Math.min(apart, points.perimeter - apart);
    if (distance < least) {
      least = distance;
      nearest = i;
    }
  }
  return nearest;
}
