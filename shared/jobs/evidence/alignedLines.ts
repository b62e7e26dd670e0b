/** A column of a text table. */
export interface TextColumn<Row> {
  readonly title: string;
  /** True for words, which stand to the left. */
  readonly isText?: boolean;
  readonly cell: (row: Row) => string;
}

/** Rows under their titles in aligned columns; columns without a value are left out. */
export function alignedLines<Row>(rows: readonly Row[], columns: readonly TextColumn<Row>[]): string[] {
  const shown = columns
    .map((column) => ({ column, cells: [column.title, ...rows.map(column.cell)] }))
    .filter(({ cells }) => cells.slice(1).some((cell) => cell !== "-" && cell !== ""));
  const widths = shown.map(({ cells }) => Math.max(...cells.map((cell) => cell.length)));
  return Array.from({ length: rows.length + 1 }, (_, line) =>
    shown
      .map(({ column, cells }, i) =>
        column.isText === true ? cells[line].padEnd(widths[i]) : cells[line].padStart(widths[i]),
      )
      .join("  ")
      .trimEnd(),
  );
}
