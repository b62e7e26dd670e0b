import { evenTicks, horizontalAxis, type Scale, scaleOf } from "../scene/axes";
import type { Scene, Shape } from "../scene/scene";
import type { CrisisZone, CrisisZones } from "../section/crisisZone";
import type { Palette } from "../style/palette";

export interface SpeedStripInputs {
  /** In the person's unit, as all speeds here. */
  readonly speed: number;
  readonly zones: CrisisZones;
  readonly unit: string;
  readonly pastWords: string;
  /** False while the curve that holds the crisis is on its way. */
  readonly isKnown: boolean;
  /** Expected drag well before and well past the crisis; null where not known. */
  readonly before: number | null;
  readonly past: number | null;
}

export interface SpeedStripDrawing extends Scene {
  readonly scale: Scale;
  readonly baseline: number;
}

/** Normal quantile of the upper end of a nine-in-ten zone. */
const zoneQuantile = 1.6449;
const humpPoints = 41;
/** Below this width words are kept short, px. */
const narrowWidth = 460;

/** All speeds on one line: where the crisis lies, how sure that is, and where the design is. */
export function speedStripScene(
  { speed, zones, unit, pastWords, isKnown, before, past }: SpeedStripInputs,
  [width, height]: readonly [number, number],
  palette: Palette,
): SpeedStripDrawing {
  const zone = zones.rising;
  const highest = roundUp(Math.max(1.7 * speed, zone === null ? 0 : Math.min(1.5 * zone.high, 5 * speed)));
  const scale = scaleOf(0, highest, 4, width - 26);
  const baseline = height - 22;
  const shapes: Shape[] = [];
  const [x, right] = [scale.at(speed), scale.at(highest)];
  if (zone !== null) {
    const hump = humpOf(zone, scale, baseline, baseline - 30, highest);
    shapes.push(
      { kind: "lines", lines: [hump], closed: true, fill: palette.ember, opacity: 0.14 },
      { kind: "hatch", area: hump, stroke: palette.ember, opacity: 0.45 },
    );
  }
  const ticks = evenTicks(0, highest, 8);
  const last = ticks[ticks.length - 1];
  shapes.push(
    ...horizontalAxis(scale, baseline, ticks, (tick) => (tick === last ? `${tick} ${unit}` : String(tick)), palette),
  );
  if (zone !== null) {
    const [a, b] = [scale.at(zone.low), Math.min(right, scale.at(zone.high))];
    if (a < right) {
      shapes.push(
        { kind: "lines", lines: [[a, baseline, b, baseline]], stroke: palette.ember, width: 4.5 },
        {
          kind: "text",
          x: Math.max(4, a),
          y: baseline - 34,
          text: `crisis ${short(zone.low)} to ${short(zone.high)}`,
          fill: palette.ember,
          bold: true,
          anchor: a > 80 ? "end" : "start",
          rim: palette.paper,
        },
        ...arrow(zone.mid, 1, scale, baseline, palette),
      );
    }
    if (zones.falling !== null) shapes.push(...arrow(zones.falling.mid, -1, scale, baseline, palette));
  }
  const isNarrow = width < narrowWidth;
  const isFarRight = x > width - (isNarrow ? 110 : 190);
  shapes.push(
    { kind: "lines", lines: [[x, baseline + 4, x, baseline - 36]], stroke: palette.accent, width: 2 },
    {
      kind: "text",
      x: x + (isFarRight ? -16 : 16),
      y: baseline - 33,
      text: `you, ${short(speed)} ${unit}${isNarrow ? "" : pastWords}`,
      fill: palette.accent,
      bold: true,
      size: 11.5,
      anchor: isFarRight ? "end" : "start",
      rim: palette.paper,
    },
  );
  if (zone !== null && before !== null && scale.at(zone.low) > 90) {
    shapes.push({
      kind: "text",
      x: 4,
      y: baseline - 7,
      text: `before: Cd ${before.toFixed(2)}`,
      fill: palette.softInk,
      rim: palette.paper,
    });
  }
  if (zone !== null && past !== null && scale.at(zone.high) < right - 90) {
    shapes.push({
      kind: "text",
      x: right,
      y: baseline - 7,
      text: `past: Cd ${past.toFixed(2)}`,
      fill: palette.softInk,
      anchor: "end",
      rim: palette.paper,
    });
  }
  if (zone === null && isKnown) {
    shapes.push({
      kind: "text",
      x: right,
      y: baseline - 7,
      text: "no drag crisis in sight",
      fill: palette.softInk,
      anchor: "end",
    });
  }
  return { width, height, shapes, scale, baseline };
}

/** Where a rising (1) or a falling (-1) speed meets the crisis. */
function arrow(speed: number, way: 1 | -1, scale: Scale, baseline: number, palette: Palette): Shape[] {
  if (speed > scale.to) return [];
  const x = scale.at(speed);
  return [
    {
      kind: "lines",
      lines: [[x - 4 * way, baseline - 5, x + 5 * way, baseline, x - 4 * way, baseline + 5]],
      closed: true,
      fill: palette.ember,
      stroke: palette.paper,
      width: 1,
    },
  ];
}

/** The density of the crisis's speed, log-normal by its 5 and 95 %. */
function humpOf(
  { low, mid, high }: CrisisZone,
  scale: Scale,
  baseline: number,
  top: number,
  highest: number,
): number[] {
  const deviation = Math.max(1e-3, Math.log(high / low) / (2 * zoneQuantile));
  const at = (i: number) => mid * Math.exp(deviation * (-2.8 + (5.6 * i) / (humpPoints - 1)));
  const speeds = Array.from({ length: humpPoints }, (_, i) => at(i)).filter((speed) => speed <= highest);
  if (speeds.length === 0) return [];
  const densities = speeds.map((speed) => Math.exp(-0.5 * (Math.log(speed / mid) / deviation) ** 2) / speed);
  const most = Math.max(...densities);
  const outline = speeds.flatMap((speed, i) => [scale.at(speed), baseline - ((baseline - top) * densities[i]) / most]);
  return [scale.at(speeds[0]), baseline, ...outline, scale.at(speeds[speeds.length - 1]), baseline];
}

function roundUp(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  return [1, 1.2, 1.6, 2, 2.5, 3, 4, 5, 6, 8, 10].map((lead) => lead * power).find((round) => round >= value)!;
}

function short(value: number): string {
  return String(Number(value.toPrecision(2)));
}
