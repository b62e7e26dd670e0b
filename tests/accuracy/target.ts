import type { PublishedSource } from "../published/publishedValue";
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
}

export interface JudgedTarget {
  readonly area: string;
  readonly statement: string;
  readonly allowed: string;
  readonly predicted: readonly (number | null)[];
  /** Null when the engine gives no answer; then the target counts as missed. */
  readonly met: boolean | null;
  /** Why there is no answer. */
  readonly note: string | null;
}

export function judgeTarget(target: Target, predictions: readonly Prediction[]): JudgedTarget {
  const missing = predictions.find(({ value }) => value === null);
  return {
    area: target.area,
    statement: target.statement,
    allowed: target.allowed,
    predicted: predictions.map(({ value }) => value),
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
