import Papa from "papaparse";
import type { ComparisonResult, ComparisonRow } from "./comparisonResult";

/** Columns of the CSV output in order: the keys of a comparison row. */
export const comparisonColumns = [
  "set",
  "reynolds",
  "direction",
  "measuredDragCoefficient",
  "measuredExpandedUncertainty",
  "predictedDragCoefficient",
  "predictedLow",
  "predictedHigh",
  "regime",
  "residual",
  "residualPercent",
  "normalisedError",
  "exceedsBothBands",
  "measuredStrouhal",
  "predictedStrouhal",
  "measuredBasePressureCoefficient",
  "predictedBasePressureCoefficient",
  "measuredSeparationAngleDegrees",
  "predictedSeparationAngleDegrees",
  "applicability",
  "applicabilityReason",
] as const satisfies readonly (keyof ComparisonRow)[];

/** What makes a spreadsheet take text for a formula. */
const formulaStart = /^[=+\-@\t\r]/;

/** The compared points as comma-separated values (RFC 4180), one line per point, lines ending in CR LF. */
export function comparisonCsv({ sets }: ComparisonResult): string {
  const rows = sets.flatMap((set) => set.rows.map((row) => ({ ...row })));
  const table = Papa.unparse(rows, {
    columns: [...comparisonColumns],
    newline: "\r\n",
    escapeFormulae: formulaStart,
  });
  return `${table}\r\n`;
}
