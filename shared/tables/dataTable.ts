/** A cell as it was typed; null or an empty text is a missing value. */
export type DataCell = string | number | null;

/** A table as it was read or typed, so that nothing of it is lost: texts stay texts until a reader asks for numbers. */
export interface DataTable {
  readonly columns: readonly string[];
  /** Each row in the order of the columns; a shorter one has its last cells missing. */
  readonly rows: readonly (readonly DataCell[])[];
  /** Number of the header's row in the file, 1 when left out: remarks may stand above it. */
  readonly headerRow?: number;
  /** What separated the cells in the file; a semicolon or a tab hints at decimal commas. */
  readonly separator?: "," | ";" | "\t";
}

/** What is wrong with a cell, a row or a column. */
export interface TableProblem {
  /** Row as a person counts it in the file, the header included; null for a whole column or table. */
  readonly row: number | null;
  readonly column: string | null;
  readonly message: string;
}

/** "row 7, column force: ..." */
export function tableProblemText({ row, column, message }: TableProblem): string {
  const place = [...(row === null ? [] : [`row ${row}`]), ...(column === null ? [] : [`column ${column}`])].join(", ");
  return place === "" ? message : `${place}: ${message}`;
}

/** The number of a row as a person counts it. */
export function rowNumber(table: DataTable, index: number): number {
  return (table.headerRow ?? 1) + 1 + index;
}

/** Texts that stand for a missing value in tables. */
const missingTexts = new Set(["", "-", "–", "—", "n/a", "na", "nan", "null", "none", "?"]);

export function isMissing(cell: DataCell | undefined): boolean {
  return (
    cell === undefined || cell === null || (typeof cell === "string" && missingTexts.has(cell.trim().toLowerCase()))
  );
}
