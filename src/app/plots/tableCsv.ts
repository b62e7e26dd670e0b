import Papa from "papaparse";
import type { DataTable } from "./plotFigure";

/** A plot's table as comma-separated text with a heading line. Text that a spreadsheet would run as a formula is escaped. */
export function tableCsv(table: DataTable): string {
  return Papa.unparse(
    { fields: [...table.columns], data: table.rows.map((row) => [...row]) },
    { newline: "\n", escapeFormulae: true },
  );
}
