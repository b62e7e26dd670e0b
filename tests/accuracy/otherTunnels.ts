import { mean } from "simple-statistics";
import { experimentOf, type PublishedSource, type PublishedValue } from "../published/publishedValue";
import type { SectionQuantity } from "../published/quantity";
import { groupBy } from "./groupBy";
import type { AnswerOf } from "./sectionDrags";

/** How well one tunnel's drag of the smooth circle is foretold by the others' mean curve and by the engine. */
export interface TunnelComparison {
  /** Reynolds numbers from and to. */
  readonly range: readonly [number, number];
  readonly tunnels: number;
  readonly points: number;
  /** Root mean square of ln Cd, over the points that at least one other tunnel covers. */
  readonly otherTunnels: number | null;
  /** The same of the engine, at the same points. */
  readonly engine: number | null;
}

/** Ranges of Reynolds number: below the crisis, its gradual beginning, the crisis, the floor, the rise, the level beyond. */
export const tunnelRanges: readonly (readonly [number, number])[] = [
  [1e4, 1.3e5],
  [1.3e5, 2.5e5],
  [2.5e5, 4.2e5],
  [4.2e5, 1.2e6],
  [1.2e6, 3e6],
  [3e6, 1e7],
];

/** An experiment needs this many points to be a curve. */
const leastPoints = 6;
/** Points of a curve nearer than this in ln Re are taken together: symbols scatter, and branches stand side by side. */
const binWidth = 0.08;

/** One measured point of the smooth circle in a quiet stream. */
export interface TunnelPoint {
  readonly experiment: string;
  readonly logReynolds: number;
  readonly logDrag: number;
  readonly quantity: SectionQuantity;
}

/** Points of the smooth circle of every experiment that gives a curve of them. */
export function tunnelPoints(sources: readonly PublishedSource[]): TunnelPoint[] {
  const points = sources
    .filter(({ nature }) => nature === "measurement")
    .flatMap((source) => source.values.flatMap((value) => pointOf(experimentOf(source), value)));
  return [...groupBy(points, ({ experiment }) => experiment).values()]
    .filter((own) => own.length >= leastPoints)
    .flat();
}

function pointOf(experiment: string, { group, quantity, value, shownOnly }: PublishedValue): TunnelPoint[] {
  if (group !== "smooth cylinder" || quantity.kind !== "dragCoefficient" || shownOnly !== undefined) return [];
  return [{ experiment, logReynolds: Math.log(quantity.reynolds), logDrag: Math.log(value), quantity }];
}

/** The comparison in each range of Reynolds number. */
export function compareTunnels(points: readonly TunnelPoint[], answerOf: AnswerOf): TunnelComparison[] {
  const curves = [...groupBy(points, ({ experiment }) => experiment)].map(([experiment, own]) => ({
    experiment,
    nodes: binned(own),
  }));
  const judged = points.flatMap((point) => {
    const others = curves.flatMap(({ experiment, nodes }) => {
      const value = experiment === point.experiment ? null : interpolate(nodes, point.logReynolds);
      return value === null ? [] : [value];
    });
    const predicted = answerOf(point.quantity);
    if (others.length === 0 || predicted === null) return [];
    return [
      {
        experiment: point.experiment,
        reynolds: Math.exp(point.logReynolds),
        tunnelError: mean(others) - point.logDrag,
        engineError: Math.log(predicted) - point.logDrag,
      },
    ];
  });
  return tunnelRanges.map((range) => {
    const inRange = judged.filter(({ reynolds }) => reynolds >= range[0] && reynolds < range[1]);
    const byTunnel = [...groupBy(inRange, ({ experiment }) => experiment).values()];
    const rms = (error: (point: (typeof judged)[number]) => number) =>
      byTunnel.length === 0
        ? null
        : Math.sqrt(mean(byTunnel.map((own) => mean(own.map((point) => error(point) ** 2)))));
    return {
      range,
      tunnels: byTunnel.length,
      points: inRange.length,
      otherTunnels: rms(({ tunnelError }) => tunnelError),
      engine: rms(({ engineError }) => engineError),
    };
  });
}

/** Mean ln Cd of neighbouring points, rising in ln Re. */
function binned(points: readonly TunnelPoint[]): [number, number][] {
  const sorted = [...points].sort((a, b) => a.logReynolds - b.logReynolds);
  const bins: TunnelPoint[][] = [];
  for (const point of sorted) {
    const last = bins[bins.length - 1];
    if (last !== undefined && point.logReynolds - last[0].logReynolds < binWidth) last.push(point);
    else bins.push([point]);
  }
  return bins.map((bin) => [mean(bin.map(({ logReynolds }) => logReynolds)), mean(bin.map(({ logDrag }) => logDrag))]);
}

/** Linear between nodes; null outside of them. */
function interpolate(nodes: readonly (readonly [number, number])[], x: number): number | null {
  for (let i = 1; i < nodes.length; i++) {
    const [x0, y0] = nodes[i - 1];
    const [x1, y1] = nodes[i];
    if (x >= x0 && x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return null;
}
