import type { ResultRow } from "../../../shared/engine/section/resultRow";
import { decadeTicks, evenTicks, horizontalAxis, levels, powerText, type Scale, scaleOf } from "../scene/axes";
import type { Scene, Shape } from "../scene/scene";
import type { CrisisZone } from "../section/crisisZone";
import type { MarkName } from "../style/markName";
import type { Palette } from "../style/palette";

/** A pinned design's curve, in its own style. */
export interface PinnedCurve {
  readonly name: string;
  readonly rows: readonly ResultRow[];
  readonly color: string;
  readonly dash: string;
}

/** Published points of one source, with the scatter that it states. */
export interface PublishedPoints {
  readonly source: string;
  readonly mark: MarkName;
  /** Reynolds number, Cd, lowest and highest by the source's own scatter. */
  readonly points: readonly (readonly [number, number, number, number])[];
}

export interface DragCurveInputs {
  readonly rows: readonly ResultRow[];
  readonly pins: readonly PinnedCurve[];
  readonly published: readonly PublishedPoints[];
  readonly zone: CrisisZone | null;
  /** Where the design is now; null before it is solved. */
  readonly at: { readonly reynolds: number; readonly drag: number } | null;
  /** m/s over Re. */
  readonly speedPerReynolds: number;
  /** Writes a speed; null leaves out the axis of speeds. */
  readonly speedText: ((speed: number) => string) | null;
  /** Reynolds numbers to show; left out for those around the design and its crisis. */
  readonly range?: readonly [number, number];
  /** What the Reynolds number is on, in words. */
  readonly lengthText: string;
}

export interface DragCurveDrawing extends Scene {
  readonly xScale: Scale;
  readonly yScale: Scale;
}

const margin = { left: 38, right: 12, top: 34, bottom: 42 } as const;

/** The drag curve with its band, the thin states under it, published points by source and the crisis zone. */
export function dragCurveScene(
  inputs: DragCurveInputs,
  [width, height]: readonly [number, number],
  palette: Palette,
): DragCurveDrawing {
  const { rows, zone, at, speedPerReynolds } = inputs;
  const [from, to] = inputs.range ?? reynoldsRange(inputs);
  const xScale = scaleOf(from, to, margin.left, width - margin.right, true);
  const inside = (reynolds: number) => reynolds >= from * 0.98 && reynolds <= to * 1.02;
  const yScale = scaleOf(0, highestDrag(inputs, inside), height - margin.bottom, margin.top);
  const { left, top } = margin;
  const [right, bottom] = [width - margin.right, height - margin.bottom];
  const clip = (reynolds: number) => Math.max(left, Math.min(right, xScale.at(reynolds)));
  const shapes: Shape[] = [...levels(yScale, left, right, evenTicks(0, yScale.to, 6), palette)];
  if (zone !== null) {
    const [a, b] = [clip(zone.low / speedPerReynolds), clip(zone.high / speedPerReynolds)];
    if (b > a) {
      shapes.push({
        kind: "hatch",
        area: [a, top, b, top, b, bottom, a, bottom],
        stroke: palette.ember,
        opacity: 0.32,
      });
    }
  }
  const rising = rows.filter((row) => row.branch === "rising" && inside(row.reynolds));
  const band = rising.filter((row) => row.dragCoefficientLow !== null && row.dragCoefficientHigh !== null);
  if (band.length > 1) {
    const forth = band.flatMap((row) => [xScale.at(row.reynolds), yScale.at(row.dragCoefficientHigh!)]);
    const back = [...band].reverse().flatMap((row) => [xScale.at(row.reynolds), yScale.at(row.dragCoefficientLow!)]);
    shapes.push({ kind: "lines", lines: [[...forth, ...back]], closed: true, fill: palette.accent, opacity: 0.17 });
  }
  shapes.push(
    ...stateLines(
      rows.filter((row) => inside(row.reynolds)),
      xScale,
      yScale,
      palette,
    ),
  );
  for (const { rows: pinned, color, dash, name } of inputs.pins) {
    const line = expectedLine(
      pinned.filter((row) => inside(row.reynolds)),
      xScale,
      yScale,
    );
    if (line.length < 4) continue;
    shapes.push(
      { kind: "lines", lines: [line], stroke: color, width: 1.8, dash: dash === "" ? [] : dash.split(" ").map(Number) },
      { kind: "text", x: line[0] + 4, y: line[1] - 5, text: name, fill: color, bold: true, rim: palette.paper },
    );
  }
  shapes.push(
    { kind: "lines", lines: [expectedLine(rising, xScale, yScale)], stroke: palette.accent, width: 2.8, round: true },
    ...publishedShapes(inputs.published, inside, xScale, yScale, palette),
    ...horizontalAxis(xScale, bottom, decadeTicks(from, to), powerText, palette),
    ...speedAxis(inputs, xScale, top, palette),
    { kind: "text", x: left, y: height - 6, text: inputs.lengthText, fill: palette.softInk, size: 10.5 },
  );
  if (zone !== null) {
    const [a, b] = [clip(zone.low / speedPerReynolds), clip(zone.high / speedPerReynolds)];
    if (b > a) {
      const middle = Math.max(left + 46, Math.min(right - 46, (a + b) / 2));
      shapes.push({
        kind: "text",
        x: middle,
        y: top + 14,
        text: "crisis, 9 in 10",
        fill: palette.ember,
        bold: true,
        anchor: "middle",
        rim: palette.paper,
      });
    }
  }
  if (at !== null && inside(at.reynolds)) {
    const x = xScale.at(at.reynolds);
    const isRight = x > width - 110;
    shapes.push(
      { kind: "lines", lines: [[x, top, x, bottom]], stroke: palette.accent, width: 1.2, dash: [2, 3] },
      {
        kind: "text",
        x: x + (isRight ? -15 : 15),
        y: yScale.at(at.drag) - 1,
        text: at.drag.toFixed(2),
        fill: palette.accent,
        bold: true,
        size: 12.5,
        anchor: isRight ? "end" : "start",
        rim: palette.paper,
      },
      {
        kind: "text",
        x: x + (isRight ? -15 : 15),
        y: yScale.at(at.drag) + 12,
        text: "expected",
        fill: palette.accent,
        anchor: isRight ? "end" : "start",
        rim: palette.paper,
      },
    );
  }
  return { width, height, shapes, xScale, yScale };
}

/** Round ends that hold the design, its crisis and room around both; they move in steps, so that the axis stands still. */
function reynoldsRange({ rows, zone, at, speedPerReynolds }: DragCurveInputs): readonly [number, number] {
  const own = at?.reynolds ?? 1e5;
  const low = Math.max(1e4, Math.min(own / 3, zone === null ? own : zone.low / speedPerReynolds / 2.2));
  const high = Math.min(1e7, Math.max(own * 5, zone === null ? own : (zone.high / speedPerReynolds) * 2.6));
  const known = rows.length > 2 ? ([rows[0].reynolds, rows[rows.length - 1].reynolds] as const) : ([1e4, 1e7] as const);
  const ticks = decadeTicks(Math.min(known[0], low) / 10, Math.max(known[1], high) * 10);
  const from = ticks.findLast((tick) => tick <= low) ?? low;
  const to = ticks.find((tick) => tick >= high) ?? high;
  return [from, to];
}

function highestDrag({ rows, pins, at }: DragCurveInputs, inside: (reynolds: number) => boolean): number {
  const shown = [...rows, ...pins.flatMap((pin) => pin.rows)].filter((row) => inside(row.reynolds));
  const values = shown.flatMap((row) => [row.dragCoefficientHigh, row.dragCoefficientExpected, row.dragCoefficient]);
  const most = Math.max(at?.drag ?? 0, ...values.map((value) => value ?? 0));
  return [0.4, 0.6, 0.8, 1, 1.2, 1.4, 1.6, 2, 2.4, 3, 4, 5, 6, 8, 10].find((top) => top >= most * 1.02) ?? most * 1.05;
}

function expectedLine(rows: readonly ResultRow[], xScale: Scale, yScale: Scale): number[] {
  return rows.flatMap((row) => {
    const drag = row.dragCoefficientExpected ?? row.dragCoefficient;
    return row.branch !== "rising" || drag === null ? [] : [xScale.at(row.reynolds), yScale.at(drag)];
  });
}

/** The engine's own states, thin: solid where the regime holds, dotted where the flow jumps to another. */
function stateLines(rows: readonly ResultRow[], xScale: Scale, yScale: Scale, palette: Palette): Shape[] {
  const held: number[][] = [];
  const jumps: number[][] = [];
  for (const branch of ["rising", "falling"] as const) {
    const own = rows.filter((row) => row.branch === branch && row.dragCoefficient !== null);
    for (let i = 1; i < own.length; i++) {
      const [a, b] = [own[i - 1], own[i]];
      const line = [
        xScale.at(a.reynolds),
        yScale.at(a.dragCoefficient!),
        xScale.at(b.reynolds),
        yScale.at(b.dragCoefficient!),
      ];
      (a.regime === b.regime && a.oneSided === b.oneSided ? held : jumps).push(line);
    }
  }
  return [
    { kind: "lines", lines: held, stroke: palette.ink, width: 1, opacity: 0.8 },
    { kind: "lines", lines: jumps, stroke: palette.ink, width: 1, dash: [1.5, 2.5], opacity: 0.8 },
  ];
}

function publishedShapes(
  sources: readonly PublishedPoints[],
  inside: (reynolds: number) => boolean,
  xScale: Scale,
  yScale: Scale,
  palette: Palette,
): Shape[] {
  return sources.flatMap(({ source, mark, points }): Shape[] => {
    const shown = points.filter(([reynolds, drag]) => inside(reynolds) && drag <= yScale.to);
    if (shown.length === 0) return [];
    const last = shown[shown.length - 1];
    const x = xScale.at(last[0]);
    return [
      {
        kind: "lines",
        lines: shown.map(([re, , low, high]) => [
          xScale.at(re),
          yScale.at(low),
          xScale.at(re),
          yScale.at(Math.min(high, yScale.to)),
        ]),
        stroke: palette.outline,
      },
      ...shown.map(
        ([re, drag]): Shape => ({
          kind: "mark",
          mark,
          x: xScale.at(re),
          y: yScale.at(drag),
          size: 3.6,
          fill: palette.paper,
          stroke: palette.outline,
          width: 1.3,
        }),
      ),
      {
        kind: "text",
        x: Math.min(x, xScale.at(xScale.to) - 2),
        y: yScale.at(last[1]) - 9,
        text: source,
        fill: palette.softInk,
        size: 10.5,
        anchor: "end",
        rim: palette.paper,
      },
    ];
  });
}

function speedAxis(
  { speedPerReynolds, speedText }: DragCurveInputs,
  xScale: Scale,
  top: number,
  palette: Palette,
): Shape[] {
  if (speedText === null) return [];
  const [low, high] = [xScale.from * speedPerReynolds, xScale.to * speedPerReynolds];
  const ticks = decadeTicks(low, high);
  const speeds = scaleOf(low, high, xScale.at(xScale.from), xScale.at(xScale.to), true);
  const last = ticks.length - 1;
  return horizontalAxis(
    speeds,
    top,
    ticks,
    (tick) => (tick === ticks[last] ? speedText(tick) : speedText(tick).split(" ")[0]),
    palette,
    "above",
  );
}
