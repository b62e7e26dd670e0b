import type { ResultRow } from "../../../../shared/engine/section/resultRow";
import type { DataTable } from "../../plots/plotFigure";

const columns = [
  "reynolds",
  "speedMetresPerSecond",
  "branch",
  "regime",
  "dragCoefficient",
  "dragCoefficientExpected",
  "dragCoefficientLow",
  "dragCoefficientHigh",
  "pastCrisisShare",
  "applicability",
] as const satisfies readonly (keyof ResultRow)[];

/** The rows of a curve with the keys of result files. */
export function curveTable(
  rows: readonly ResultRow[],
  first?: readonly (readonly [string, readonly number[]])[],
): DataTable {
  const extra = first ?? [];
  return {
    columns: [...extra.map(([name]) => name), ...columns],
    rows: rows.map((row, i) => [...extra.map(([, values]) => values[i]), ...columns.map((column) => row[column])]),
  };
}
