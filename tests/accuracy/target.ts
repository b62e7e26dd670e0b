import type { PublishedSource, PublishedValue } from "../published/publishedValue";
import type { Quantity } from "../published/quantity";
import type { Prediction } from "./prediction";
import { compact, conditionText, kindTexts } from "./quantityText";

/** What the engine is asked to reach: a statement, the quantities that decide it, and the judgement. */
export interface Target {
  readonly area: string;
  readonly statement: string;
  /** What is allowed, for the table. */
  readonly allowed: string;
  readonly quantities: readonly Quantity[];
  readonly judge: (predictions: readonly Prediction[]) => boolean | null;
  /** What is judged, as text, where the predictions themselves do not say it. */
  readonly figure?: (values: readonly number[]) => string;
}

export interface JudgedTarget {
  readonly area: string;
  readonly statement: string;
  readonly allowed: string;
  readonly predicted: readonly (number | null)[];
  /** What the engine reaches, for the table. */
  readonly reached: string;
  /** Null when the engine gives no answer; then the target counts as missed. */
  readonly met: boolean | null;
  /** Why there is no answer. */
  readonly note: string | null;
}

/** More values than this are not listed in a table. */
const mostListed = 6;

export function judgeTarget(target: Target, predictions: readonly Prediction[]): JudgedTarget {
  const missing = predictions.find(({ value }) => value === null);
  return {
    area: target.area,
    statement: target.statement,
    allowed: target.allowed,
    predicted: predictions.map(({ value }) => value),
    reached:
      target.figure !== undefined && missing === undefined
        ? target.figure(predictions.map(({ value }) => value!))
        : predictions.length > mostListed
          ? `${predictions.length} values`
          : predictions.map(({ value }) => (value === null ? "-" : compact(value, 4))).join(", "),
    met: missing === undefined ? target.judge(predictions) : null,
    note: missing?.note ?? null,
  };
}

/** The quantity must lie in a band. */
export function band(area: string, quantity: Quantity, low: number, high: number): Target {
  return {
    area,
    statement: `${kindTexts[quantity.kind].label}: ${conditionText(quantity)}`,
    allowed: `${compact(low)} to ${compact(high)}`,
    quantities: [quantity],
    judge: ([{ value }]) => value! >= low && value! <= high,
  };
}

/** Within a fraction of a value, or of the band that several sources span. */
export function within(area: string, quantity: Quantity, fraction: number, low: number, high = low): Target {
  const target = band(area, quantity, low * (1 - fraction), high * (1 + fraction));
  if (low === high) return target;
  return { ...target, allowed: `${target.allowed} (sources: ${compact(low)} to ${compact(high)})` };
}

/** Every value must be below, or above, the one before it. */
export function ordered(
  area: string,
  statement: string,
  quantities: readonly Quantity[],
  direction: "rising" | "falling",
): Target {
  return {
    area,
    statement,
    allowed: direction,
    quantities,
    judge: (predictions) =>
      predictions.every(
        ({ value }, i) =>
          i === 0 || Math.sign(value! - predictions[i - 1].value!) === (direction === "rising" ? 1 : -1),
      ),
  };
}

/** Every published value of one source must be met to a fraction. */
export function wholeSource(area: string, statement: string, source: PublishedSource, fraction: number): Target {
  return {
    area,
    statement,
    allowed: `each within ${compact(fraction * 100)} %`,
    quantities: source.values.map(({ quantity }) => quantity),
    judge: (predictions) =>
      predictions.every(({ value }, i) => Math.abs(value! / source.values[i].value - 1) <= fraction),
  };
}

/** A figure of several published values and the engine's must lie between two limits. */
export function errorFigure(
  area: string,
  statement: string,
  values: readonly PublishedValue[],
  figure: (predicted: readonly number[], published: readonly number[]) => number,
  [low, high]: readonly [number, number],
): Target {
  const published = values.map(({ value }) => value);
  return {
    area,
    statement: `${statement}, ${values.length} values`,
    allowed: low === 0 ? `at most ${compact(high)}` : `${compact(low)} to ${compact(high)}`,
    quantities: values.map(({ quantity }) => quantity),
    judge: (predictions) => {
      const reached = figure(
        predictions.map(({ value }) => value!),
        published,
      );
      return reached >= low && reached <= high;
    },
    figure: (predicted) => compact(figure(predicted, published)),
  };
}
