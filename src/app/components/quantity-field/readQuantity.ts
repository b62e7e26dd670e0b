import { problem, type Result, success } from "../../../../shared/result";
import { fieldText, type UnitChoice } from "../../units/units";

/** Allowed values of a field, SI. */
export interface FieldRange {
  readonly lowest?: number;
  readonly highest?: number;
  /** True when the lowest value itself is not allowed. */
  readonly aboveLowest?: boolean;
}

/**
 * The quantity that a person typed, SI; a comma is taken as the decimal point.
 * The problem says the value, the unit and the allowed range.
 */
export function readQuantity(text: string, label: string, unit: UnitChoice, range: FieldRange): Result<number> {
  const trimmed = text.trim().replace(",", ".");
  const typed = trimmed === "" ? Number.NaN : Number(trimmed);
  const allowed = rangeText(unit, range);
  if (!Number.isFinite(typed)) {
    return problem("not-a-number", `${label} is "${text.trim()}"; it must be a number${allowed}.`);
  }
  const value = unit.toSi(typed);
  const slack = 1e-9 * Math.max(1e-6, Math.abs(value));
  const { lowest, highest, aboveLowest } = range;
  const tooLow = lowest !== undefined && (aboveLowest ? !(value > lowest) : !(value >= lowest - slack));
  const tooHigh = highest !== undefined && !(value <= highest + slack);
  if (tooLow || tooHigh) {
    return problem("out-of-range", `${label} is ${withUnit(trimmed, unit)}; it must be${allowed}.`);
  }
  return success(value);
}

function rangeText(unit: UnitChoice, { lowest, highest, aboveLowest }: FieldRange): string {
  const parts: string[] = [];
  if (lowest !== undefined) parts.push(`${aboveLowest ? "above" : "from"} ${withUnit(fieldText(lowest, unit), unit)}`);
  if (highest !== undefined)
    parts.push(`${lowest === undefined ? "at most" : "to"} ${withUnit(fieldText(highest, unit), unit)}`);
  return parts.length > 0 ? ` ${parts.join(" ")}` : "";
}

function withUnit(number: string, unit: UnitChoice): string {
  return unit.symbol === "" ? number : unit.symbol === "°" ? `${number}°` : `${number} ${unit.symbol}`;
}
