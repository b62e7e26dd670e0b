/** A column of a text table. */
export interface TextColumn<Row> {
  readonly title: string;
  readonly unit: string;
  /** Set to the left, as words are; numbers stand to the right. */
  readonly isText?: boolean;
  readonly cell: (row: Row) => string;
}

/** Aligned lines: titles, units, then one line per row; columns without a value ("-" or nothing) are left out. */
export function textTable<Row>(columns: readonly TextColumn<Row>[], rows: readonly Row[]): string[] {
  const shown = columns
    .map((column) => ({ column, cells: [column.title, column.unit, ...rows.map(column.cell)] }))
    .filter(({ cells }) => cells.slice(2).some((cell) => cell !== "-" && cell !== ""));
  const widths = shown.map(({ cells }) => Math.max(...cells.map((cell) => cell.length)));
  return Array.from({ length: rows.length + 2 }, (_, line) =>
    shown
      .map(({ column, cells }, i) =>
        column.isText === true ? cells[line].padEnd(widths[i]) : cells[line].padStart(widths[i]),
      )
      .join("  ")
      .trimEnd(),
  );
}
