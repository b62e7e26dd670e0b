import type { Regime } from "../../shared/engine/solution";
import {
  type BandTable,
  type CheckedFamily,
  type CheckedRange,
  type CrisisKind,
  checkedFamilies,
  crisisKinds,
  regimes,
  smallDragCoefficient,
} from "../../shared/engine/trust/bandTable";
import { type BandPoint, type CrisisError, pointNearby } from "./bandPoints";
import { groupBy } from "./groupBy";

/** An error of one source, 0 or more. */
interface SourcedError {
  readonly source: string;
  readonly error: number;
}

/** Bands are to hold this share of what is published. */
const bandShare = 0.9;
/** A cell with fewer values or sources than these takes at least the figures of the pools that it belongs to. */
const leastValues = 5;
const leastSources = 2;
/** No band is narrower: the scatter between good tunnels. */
const narrowestHalfWidth = 0.05;
/** A drag crisis is never taken as known better than this factor of Reynolds number. */
const narrowestCrisisFactor = 1.25;

/** The rule, in words, for the report. */
export const bandRule = `A half-width is the largest 90 % quantile of |published - predicted| / max(predicted Cd, ${smallDragCoefficient}) that is left when one source is left out, and at least ${narrowestHalfWidth * 100} %. Cells with fewer than ${leastValues} values or ${leastSources} sources take the largest of their own errors, the figure of the regime over all shapes (over everything where that too is thin) and the figure of the shape over all regimes; a crisis factor takes the figure of all crises. Points near a predicted crisis are left out of it: their band spans the states on both sides. The same rule gives, from the published Reynolds numbers of the crisis, how far away a crisis still counts (at least a factor ${narrowestCrisisFactor}).`;

/** Half-widths, crisis factors and checked ranges, from the fitting halves. */
export function fitBands(points: readonly BandPoint[], crises: readonly CrisisError[]): BandTable {
  const crisisReynoldsFactor = fitCrisisFactors(crises.filter(({ half }) => half === "fit"));
  const checked = checkedRanges(points);
  const away = points.filter(
    (point) =>
      point.half === "fit" &&
      point.family !== "other" &&
      pointNearby(point, { crisisReynoldsFactor }).every(({ regime }) => regime === point.state.regime),
  );
  const cell = (family: CheckedFamily, regime: Regime) => {
    const ofRegime = away.filter((point) => point.state.regime === regime);
    return cellFigure(
      errorsOf(ofRegime.filter((point) => point.family === family)),
      errorsOf(ofRegime),
      errorsOf(away.filter((point) => point.family === family)),
      ...(isEnough(errorsOf(ofRegime)) ? [] : [errorsOf(away)]),
    );
  };
  const byRegime = (of: (regime: Regime) => number) =>
    Object.fromEntries(regimes.map((regime) => [regime, of(regime)])) as Record<Regime, number>;
  const own = Object.fromEntries(
    checkedFamilies.map((family) => [
      family,
      byRegime((regime) => roundUp(Math.max(narrowestHalfWidth, cell(family, regime)))),
    ]),
  ) as Record<CheckedFamily, Record<Regime, number>>;
  const other = byRegime((regime) => Math.max(...checkedFamilies.map((family) => own[family][regime])));
  return { crisisReynoldsFactor, halfWidths: { ...own, other }, checked };
}

/** Error of a prediction as bands count it: over the predicted value, in parts of the small one below that. */
export function bandError(published: number, predicted: number): number {
  return Math.abs(published - predicted) / Math.max(predicted, smallDragCoefficient);
}

function errorsOf(points: readonly BandPoint[]): SourcedError[] {
  return points.map(({ experiment: source, value, state }) => ({
    source,
    error: bandError(value.value, state.dragCoefficient),
  }));
}

function fitCrisisFactors(crises: readonly CrisisError[]): BandTable["crisisReynoldsFactor"] {
  const factor = (kind: CrisisKind) => {
    const own = crises.filter((crisis) => crisis.kind === kind);
    return roundUp(Math.max(narrowestCrisisFactor, Math.exp(cellFigure(own, crises))));
  };
  return Object.fromEntries(crisisKinds.map((kind) => [kind, factor(kind)])) as Record<CrisisKind, number>;
}

/**
 * The figure of a cell: its own where it has enough values; else the largest of its errors and of the figures of the
 * pools that it belongs to.
 */
function cellFigure(own: readonly SourcedError[], ...pools: readonly (readonly SourcedError[])[]): number {
  if (isEnough(own)) return leftOutQuantile(own);
  const enough = pools.filter(isEnough);
  if (enough.length === 0)
    throw new RangeError(`pools of ${pools.map(({ length }) => length)} values are too few for a band.`);
  return Math.max(...own.map(({ error }) => error), ...enough.map(leftOutQuantile));
}

function isEnough(errors: readonly SourcedError[]): boolean {
  return errors.length >= leastValues && new Set(errors.map(({ source }) => source)).size >= leastSources;
}

/** Largest quantile of the errors that is left when any one source is left out. */
export function leftOutQuantile(errors: readonly SourcedError[]): number {
  const bySource = [...groupBy(errors, ({ source }) => source).values()];
  if (bySource.length < 2) return quantileOf(errors);
  return Math.max(...bySource.map((left) => quantileOf(errors.filter((each) => !left.includes(each)))));
}

/** Smallest of the errors that at least 90 % of them do not exceed. */
function quantileOf(errors: readonly SourcedError[]): number {
  const sorted = errors.map(({ error }) => error).sort((a, b) => a - b);
  return sorted[Math.ceil(bandShare * sorted.length) - 1];
}

/** Three digits, never less. */
function roundUp(value: number): number {
  return Number((Math.ceil(value * 1000 - 1e-9) / 1000).toPrecision(4));
}

function checkedRanges(points: readonly BandPoint[]): Record<CheckedFamily, CheckedRange> {
  return Object.fromEntries(
    checkedFamilies.map((family) => [family, checkedRange(points.filter((point) => point.family === family))]),
  ) as Record<CheckedFamily, CheckedRange>;
}

function checkedRange(points: readonly BandPoint[]): CheckedRange {
  const reynolds = points.flatMap(({ value: { quantity } }) =>
    "reynolds" in quantity
      ? [quantity.reynolds]
      : "reynoldsFrom" in quantity
        ? [quantity.reynoldsFrom, quantity.reynoldsTo]
        : [],
  );
  const shapes = new Map(points.map(({ section }) => [shapeKey(section), shapePair(section)]));
  return {
    reynolds: span(reynolds),
    sandGrainRoughnessRatio: span(points.map(({ condition }) => condition.sandGrainRoughnessRatio)),
    turbulenceIntensity: span(points.map(({ condition }) => condition.turbulenceIntensity)),
    shapes: [...shapes.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1]),
  };
}

function shapePair({ lengthToHeight, cornerRadiusToHeight, shape }: BandPoint["section"]): [number, number] {
  const corner = cornerRadiusToHeight ?? (shape === "circle" ? 0.5 : 0);
  return [Number(lengthToHeight.toFixed(3)), Number(corner.toFixed(3))];
}

function shapeKey(section: BandPoint["section"]): string {
  return shapePair(section).join(" ");
}

function span(values: readonly number[]): [number, number] {
  return [Math.min(...values), Math.max(...values)];
}
