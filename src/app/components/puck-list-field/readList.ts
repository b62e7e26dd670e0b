import { problem, type Result, success } from "../../../../shared/result";
import { fieldText, type UnitChoice } from "../../units/units";

export interface ListRange {
  readonly lowest: number;
  readonly aboveLowest: boolean;
  readonly highest: number;
  /** 1 when left out. */
  readonly fewest?: number;
  readonly most: number;
}

/** Numbers as shown in a list field. */
export function listText(values: readonly number[], unit: UnitChoice): string {
  return values.map((value) => fieldText(value, unit)).join("  ");
}

/** The quantities that a person typed, SI, rising, each once; parted by blanks or semicolons, decimal comma or point. */
export function readList(text: string, label: string, unit: UnitChoice, range: ListRange): Result<number[]> {
  const parts = text.split(/[;\s]+/).filter((part) => part !== "");
  const fewest = range.fewest ?? 1;
  const from = `${range.aboveLowest ? "above" : "from"} ${fieldText(range.lowest, unit)}`;
  const rule =
    `it must be ${fewest} to ${range.most} numbers ${from} to ${fieldText(range.highest, unit)} ${unit.symbol}`.trim();
  if (parts.length < fewest || parts.length > range.most) {
    return problem("list", `${label} has ${parts.length} values; ${rule}.`);
  }
  const values: number[] = [];
  for (const part of parts) {
    const value = unit.toSi(Number(part.replace(",", ".")));
    const isInside = range.aboveLowest ? value > range.lowest : value >= range.lowest;
    if (!(isInside && value <= range.highest * (1 + 1e-9))) return problem("list", `${label} has "${part}"; ${rule}.`);
    values.push(Number(value.toPrecision(12)));
  }
  return success([...new Set(values)].sort((a, b) => a - b));
}
