import type { DataTable, TableProblem } from "./dataTable";

/** Row numbers written out at most. */
const mostNamed = 8;

/** "Rows 4, 5 and 107 more" */
function rowsText(rows: readonly number[]): string {
  const named = rows.slice(0, mostNamed).join(", ");
  const more = rows.length - Math.min(rows.length, mostNamed);
  return `${rows.length === 1 ? "Row" : "Rows"} ${named}${more > 0 ? ` and ${more} more` : ""}`;
}

/**
 * Rows that a reader passes over, gathered by the reason, so that a column in another unit does not become a wall of
 * messages.
 */
export class PassedOver {
  readonly #rows = new Map<string, number[]>();

  /** @param reason for instance "pressure coefficient out of range; it must be from -20 to 1.5" */
  add(row: number, reason: string): void {
    const rows = this.#rows.get(reason);
    if (rows === undefined) this.#rows.set(reason, [row]);
    else if (rows[rows.length - 1] !== row) rows.push(row);
  }

  get count(): number {
    return new Set([...this.#rows.values()].flat()).size;
  }

  /** One sentence for each reason, with the number of its rows. */
  get notes(): string[] {
    return [...this.#rows].map(([reason, rows]) => {
      const count = rows.length > 1 ? ` (${rows.length} rows)` : "";
      return `${rowsText(rows)} passed over${count}: ${reason}.`;
    });
  }
}

/** Problems of cells with one message for each column and fault: what differs from row to row is the cell alone. */
export function gatheredProblems(
  problems: readonly TableProblem[],
  { columns }: Pick<DataTable, "columns">,
): TableProblem[] {
  const groups = new Map<string, TableProblem[]>();
  for (const found of problems) {
    const fault = found.message.replace(/"(?:[^"\\]|\\.)*"|[+-]?\d[\d.eE+-]*/g, "#");
    const key = `${found.row === null} ${columns.indexOf(found.column ?? "")} ${fault}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [found]);
    else group.push(found);
  }
  return [...groups.values()].map((group) => {
    const [first, ...others] = group;
    if (others.length === 0 || first.row === null) return first;
    const rows = others.flatMap(({ row }) => (row === null ? [] : [row]));
    return {
      ...first,
      message: `${first.message} (the same in ${others.length} more: ${rowsText(rows).toLowerCase()})`,
    };
  });
}
