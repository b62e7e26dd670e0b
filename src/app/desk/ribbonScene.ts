import type { ResultRow } from "../../../shared/engine/section/resultRow";
import { decadeTicks, evenTicks, horizontalAxis, levels, type Scale, scaleOf } from "../scene/axes";
import type { Scene, Shape } from "../scene/scene";
import type { Ribbon } from "../section/ribbon";
import type { Palette } from "../style/palette";

export interface RibbonInputs {
  readonly ribbon: Ribbon;
  /** From SI to the person's unit. */
  readonly fromSi: (value: number) => number;
  readonly unit: string;
  /** The design's own value, SI, and its expected drag. */
  readonly value: number;
  readonly drag: number | null;
  /** What the crisis is met at, in words: "crisis at 3.5 m/s". */
  readonly crisisWords: string;
}

export interface RibbonDrawing extends Scene {
  /** Over SI values. */
  readonly xScale: Scale;
  readonly yScale: Scale;
  /** The value with the least expected drag; null before there are two. */
  readonly best: { readonly value: number; readonly drag: number } | null;
}

const margin = { left: 34, right: 22, top: 8, bottom: 22 } as const;

/** Shares of past the crisis between which the flow may be either. */
const doubtful = [0.05, 0.95] as const;

type Known = readonly [number, ResultRow];

/** The drag over one input: expected with its band, the engine's own states thin, where the crisis is in doubt, the best. */
export function ribbonScene(
  { ribbon, fromSi, unit, value, drag, crisisWords }: RibbonInputs,
  [width, height]: readonly [number, number],
  palette: Palette,
): RibbonDrawing {
  const { range, values, rows } = ribbon;
  const known = values.flatMap((one, i): Known[] => (rows[i] === null ? [] : [[one, rows[i]]]));
  const xScale = scaleOf(range.from, range.to, margin.left, width - margin.right, range.isLogarithmic);
  const bottom = height - margin.bottom;
  const most = Math.max(drag ?? 0, ...known.map(([, row]) => row.dragCoefficientHigh ?? row.dragCoefficient ?? 0));
  const yScale = scaleOf(
    0,
    [0.4, 0.6, 0.8, 1, 1.2, 1.6, 2, 2.4, 3, 4, 5, 6, 8, 10].find((one) => one >= most) ?? most * 1.05,
    bottom,
    margin.top,
  );
  const [left, right] = [xScale.at(range.from), xScale.at(range.to)];
  const at = (one: number, dragThere: number) => [xScale.at(one), yScale.at(dragThere)] as const;
  const shapes: Shape[] = [...levels(yScale, left, right, evenTicks(0, yScale.to, 3), palette)];
  const inDoubt = known.filter(
    ([, { pastCrisisShare: share }]) => share !== null && share > doubtful[0] && share < doubtful[1],
  );
  if (inDoubt.length > 0) {
    const half = (right - left) / (2 * Math.max(1, values.length - 1));
    const [a, b] = [
      Math.max(left, xScale.at(inDoubt[0][0]) - half),
      Math.min(right, xScale.at(inDoubt[inDoubt.length - 1][0]) + half),
    ];
    shapes.push({
      kind: "hatch",
      area: [a, margin.top, b, margin.top, b, bottom, a, bottom],
      stroke: palette.ember,
      opacity: 0.28,
    });
  }
  const judged = known.filter(([, row]) => row.dragCoefficientLow !== null && row.dragCoefficientHigh !== null);
  if (judged.length > 1) {
    const forth = judged.flatMap(([one, row]) => at(one, row.dragCoefficientHigh!));
    const back = [...judged].reverse().flatMap(([one, row]) => at(one, row.dragCoefficientLow!));
    shapes.push({ kind: "lines", lines: [[...forth, ...back]], closed: true, fill: palette.accent, opacity: 0.17 });
  }
  shapes.push(...thinStates(known, at, palette));
  const expected = known.map(([one, row]) => [one, row.dragCoefficientExpected ?? row.dragCoefficient ?? 0] as const);
  shapes.push({
    kind: "lines",
    lines: [expected.flatMap(([one, there]) => at(one, there))],
    stroke: palette.accent,
    width: 2.4,
    round: true,
  });
  const checked = checkedSpans(known, xScale);
  shapes.push({ kind: "lines", lines: checked.map(([a, b]) => [a, bottom, b, bottom]), stroke: palette.ink, width: 3 });
  const ticks = range.isLogarithmic
    ? decadeTicks(fromSi(range.from), fromSi(range.to))
    : evenTicks(fromSi(range.from), fromSi(range.to), 7);
  const shown = scaleOf(fromSi(range.from), fromSi(range.to), left, right, range.isLogarithmic);
  const last = ticks[ticks.length - 1];
  shapes.push(
    ...horizontalAxis(shown, bottom, ticks, (tick) => (tick === last ? `${tick} ${unit}` : String(tick)), palette),
  );
  if (inDoubt.length > 0) {
    const x = xScale.at(inDoubt[0][0]);
    const isFar = x > width - 190;
    const words = `${crisisWords} ${isRising(inDoubt, known) ? "from" : "up to"} ${round(fromSi(inDoubt[isRising(inDoubt, known) ? 0 : inDoubt.length - 1][0]))} ${unit}`;
    shapes.push({
      kind: "text",
      x: isFar ? right : x + 4,
      y: margin.top + 12,
      text: words,
      fill: palette.ember,
      bold: true,
      anchor: isFar ? "end" : "start",
      rim: palette.paper,
    });
  }
  if (checked.length > 0) {
    shapes.push({
      kind: "text",
      x: checked[0][0] + 3,
      y: bottom - 6,
      text: "checked range",
      fill: palette.softInk,
      size: 10.5,
      rim: palette.paper,
    });
  }
  const best = bestOf(expected);
  if (best !== null) {
    const [x, y] = at(best.value, best.drag);
    shapes.push({ kind: "mark", mark: "plus", x, y, size: 6, fill: palette.ink });
  }
  if (value >= range.from && value <= range.to) {
    const x = xScale.at(value);
    shapes.push({
      kind: "lines",
      lines: [[x, margin.top, x, bottom]],
      stroke: palette.accent,
      width: 1.2,
      dash: [2, 3],
    });
  }
  return { width, height, shapes, xScale, yScale, best };
}

/** The engine's states: never smoothed over where the regime changes. */
function thinStates(
  known: readonly Known[],
  at: (value: number, drag: number) => readonly [number, number],
  palette: Palette,
): Shape[] {
  const held: number[][] = [];
  const jumps: number[][] = [];
  for (let i = 1; i < known.length; i++) {
    const [[a, one], [b, other]] = [known[i - 1], known[i]];
    if (one.dragCoefficient === null || other.dragCoefficient === null) continue;
    (one.regime === other.regime ? held : jumps).push([...at(a, one.dragCoefficient), ...at(b, other.dragCoefficient)]);
  }
  return [
    { kind: "lines", lines: held, stroke: palette.ink, width: 1, opacity: 0.75 },
    { kind: "lines", lines: jumps, stroke: palette.ink, width: 1, dash: [1.5, 2.5], opacity: 0.75 },
  ];
}

/** Stretches of the axis on which sections were compared with published values. */
function checkedSpans(known: readonly Known[], xScale: Scale): (readonly [number, number])[] {
  const spans: [number, number][] = [];
  for (let i = 1; i < known.length; i++) {
    const both = [known[i - 1], known[i]];
    if (!both.every(([, row]) => row.applicability !== null && !row.applicability.startsWith("outside"))) continue;
    const [a, b] = both.map(([value]) => xScale.at(value));
    const last = spans[spans.length - 1];
    if (last !== undefined && Math.abs(last[1] - a) < 0.5) last[1] = b;
    else spans.push([a, b]);
  }
  return spans;
}

function bestOf(expected: readonly (readonly [number, number])[]): RibbonDrawing["best"] {
  if (expected.length < 2) return null;
  const [value, drag] = expected.reduce((best, one) => (one[1] < best[1] ? one : best));
  return { value, drag };
}

/** True where the flow gets past its crisis as the input grows. */
function isRising(inDoubt: readonly Known[], known: readonly Known[]): boolean {
  const after = known.find(([value]) => value > inDoubt[inDoubt.length - 1][0]);
  const before = known.findLast(([value]) => value < inDoubt[0][0]);
  const share = (one: Known | undefined, otherwise: number) => one?.[1].pastCrisisShare ?? otherwise;
  const first = inDoubt[0][1].pastCrisisShare ?? 0;
  return share(after, inDoubt[inDoubt.length - 1][1].pastCrisisShare ?? 1) >= share(before, first);
}

function round(value: number): number {
  return Number(value.toPrecision(2));
}
