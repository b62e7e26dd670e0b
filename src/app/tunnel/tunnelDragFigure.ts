import type { Data } from "plotly.js-dist-min";
import { blockageMethodWords } from "../../../shared/jobs/tunnel/blockage";
import type { PredictedDrag, SpeedDirection } from "../../../shared/jobs/tunnel/predictedDrag";
import type { TunnelPoint, TunnelResult } from "../../../shared/jobs/tunnel/tunnelResult";
import { bandWords } from "../plots/bandWords";
import { figureLayout, type PlotFigure, withOpacity } from "../plots/plotFigure";
import { type Palette, seriesStyle } from "../style/palette";

const directions: readonly SpeedDirection[] = ["rising", "falling"];

/** Reduced drag coefficients with their bars over the prediction with its band, both directions, and the other corrections. */
export function tunnelDragFigure(result: TunnelResult, palette: Palette): PlotFigure {
  const points = result.reduction?.points ?? [];
  const [predictedStyle, measuredStyle, fullStyle, otherStyle, lastStyle] = [0, 1, 2, 3, 4].map((i) =>
    seriesStyle(palette, i),
  );
  const inTunnel = result.predictions.at(-1);
  const data: Data[] = [];
  if (inTunnel !== undefined)
    data.push(...predictionTraces(inTunnel, predictedStyle.color, "in the tunnel's turbulence"));
  const atFull = result.predictions.length > 1 ? result.predictions[0] : undefined;
  if (atFull !== undefined && atFull.turbulencePercent !== inTunnel?.turbulencePercent) {
    data.push({
      ...line(atFull, "rising"),
      name: `predicted at ${atFull.turbulencePercent} % turbulence, as at full size`,
      line: { color: fullStyle.color, dash: "dot", width: 2 },
    });
  }
  const reported = result.reduction?.correction ?? "none";
  const others = (["none", "maskell", "allenVincenti"] as const).filter(
    (method) =>
      method !== reported && points.some(({ corrections }) => corrections.some((each) => each.method === method)),
  );
  for (const [i, method] of others.entries()) {
    const style = i === 0 ? otherStyle : lastStyle;
    const own = points.flatMap((point) => point.corrections.filter((each) => each.method === method));
    data.push({
      type: "scatter",
      mode: "markers",
      name: blockageMethodWords[method],
      x: own.map(({ reynolds }) => reynolds),
      y: own.map(({ dragCoefficient }) => dragCoefficient),
      hovertemplate: "Re %{x:.3g}<br>Cd %{y:.4f}<extra>%{fullData.name}</extra>",
      marker: { color: style.color, symbol: style.symbol, size: 6 },
    });
  }
  for (const direction of directions) {
    const own = points.filter((point) => point.direction === direction);
    if (own.length === 0) continue;
    data.push({
      type: "scatter",
      mode: "markers",
      name: `measured, speed ${direction} (${blockageMethodWords[reported]})`,
      x: own.map(({ reynolds }) => reynolds),
      y: own.map(({ dragCoefficient }) => dragCoefficient),
      error_y: bars(own, measuredStyle.color),
      hovertemplate: "Re %{x:.3g}<br>Cd %{y:.4f}<extra>%{fullData.name}</extra>",
      marker: {
        color: measuredStyle.color,
        symbol: direction === "falling" ? "square-open" : "square",
        size: 8,
        line: { width: 1.6, color: measuredStyle.color },
      },
    });
  }
  const predicted = result.predictions.flatMap((each) => each.points);
  const highest = [
    ...predicted.map(({ dragCoefficient }) => dragCoefficient.high),
    ...points.map(({ dragCoefficient, firstOrder }) => dragCoefficient + firstOrder.expandedUncertainty),
  ];
  return {
    key: "tunnel-drag",
    title: `Drag of ${result.model} in the tunnel`,
    caption: `Cd on the ${result.referenceArea}, Re on the ${result.referenceLength}. Bars: expanded uncertainty (${coverageText(points)}); band of the prediction: ${bandWords[result.shape]}. Open marks: falling speed.`,
    data,
    layout: figureLayout(
      palette,
      {
        title: "Reynolds number Re (–)",
        logarithmic: true,
        values: [...predicted, ...points].map(({ reynolds }) => reynolds),
      },
      { title: "drag coefficient Cd (–)", values: highest, fromZero: true },
    ),
    table: {
      columns: [
        "speed",
        "U (m/s)",
        "repeats",
        "Re",
        "Cd",
        "expanded uncertainty",
        "Monte Carlo low",
        "Monte Carlo high",
        ...(["none", "maskell", "allenVincenti"] as const).map((method) => `Cd, ${blockageMethodWords[method]}`),
        "predicted low",
        "predicted Cd",
        "predicted high",
      ],
      rows: points.map((point) => [
        point.direction,
        point.speedMetresPerSecond,
        point.repeats,
        point.reynolds,
        point.dragCoefficient,
        point.firstOrder.expandedUncertainty,
        point.monteCarlo?.low ?? null,
        point.monteCarlo?.high ?? null,
        ...(["none", "maskell", "allenVincenti"] as const).map(
          (method) => point.corrections.find((each) => each.method === method)?.dragCoefficient ?? null,
        ),
        point.predictedDragCoefficient?.low ?? null,
        point.predictedDragCoefficient?.expected ?? null,
        point.predictedDragCoefficient?.high ?? null,
      ]),
    },
  };
}

function coverageText([first]: readonly TunnelPoint[]): string {
  return first === undefined ? "none yet" : `${Number((100 * first.firstOrder.coverage).toPrecision(4))} %`;
}

function bars(points: readonly TunnelPoint[], color: string) {
  return {
    type: "data" as const,
    array: points.map(({ firstOrder }) => firstOrder.expandedUncertainty),
    color,
    thickness: 1.5,
    width: 3,
    visible: true,
  };
}

function line(predicted: PredictedDrag, direction: SpeedDirection) {
  const own = predicted.points.filter((point) => point.direction === direction);
  return {
    type: "scatter" as const,
    mode: "lines" as const,
    x: own.map(({ reynolds }) => reynolds),
    y: own.map(({ dragCoefficient }) => dragCoefficient.expected),
    hovertemplate: "Re %{x:.3g}<br>Cd %{y:.3f}<extra>%{fullData.name}</extra>",
  };
}

function predictionTraces(predicted: PredictedDrag, color: string, where: string): Data[] {
  const rising = predicted.points.filter(({ direction }) => direction === "rising");
  const traces: Data[] = [
    {
      type: "scatter",
      mode: "lines",
      name: "prediction, band",
      x: [...rising, ...[...rising].reverse()].map(({ reynolds }) => reynolds),
      y: [
        ...rising.map(({ dragCoefficient }) => dragCoefficient.high),
        ...[...rising].reverse().map(({ dragCoefficient }) => dragCoefficient.low),
      ],
      fill: "toself",
      fillcolor: withOpacity(color, 0.16),
      line: { width: 0 },
      hoverinfo: "skip",
      showlegend: false,
    },
    { ...line(predicted, "rising"), name: `predicted ${where}`, line: { color, width: 2.5 } },
  ];
  const differs = predicted.points.some(
    (point) =>
      point.direction === "falling" &&
      rising.some(
        (each) => each.reynolds === point.reynolds && each.dragCoefficient.expected !== point.dragCoefficient.expected,
      ),
  );
  if (differs) {
    traces.push({
      ...line(predicted, "falling"),
      name: `predicted ${where}, speed falling`,
      line: { color, width: 2.5, dash: "dash" },
    });
  }
  return traces;
}
