import type { TunnelBlockDocument } from "../../../shared/jobs/tunnel/tunnelBlockDocument";
import { readCsvTable } from "../../../shared/tables/csvTable";
import type { DataTable } from "../../../shared/tables/dataTable";
import { Notifier } from "../store/notifier";
import { guessedColumns } from "./guessedColumns";
import type { TableDrafts } from "./tableEdits";
import { type TableKey, type TablePart, tableKinds } from "./tableKinds";
import { changeBlock, tunnelBench } from "./tunnelBench";
import { tableInCase } from "./withTables";

/** The drafts; where there is none the block's own table is shown. */
export const tableDrafts = new Notifier<TableDrafts>({});

/** Takes a table's text: into the block where it is a table, else as a draft. An empty text takes the table away. */
export function takeTable(key: TableKey, text: string): void {
  if (text.trim() === "") {
    takeAway(key);
    return;
  }
  const table = readCsvTable(text);
  if (!table.ok) {
    tableDrafts.patch({ [key]: { text, message: table.problem.message } });
    return;
  }
  tableDrafts.patch({ [key]: undefined });
  const kind = tableKinds[key];
  const before: TablePart | undefined = tunnelBench.present.block[key];
  if (before !== undefined && typeof before.data !== "string" && sameColumns(before.data, table.value)) {
    replace(key, { ...before, data: tableInCase(table.value) });
    return;
  }
  // Columns, decimal mark and rows left out were those of the other table; what else the block has stays.
  const { data: _data, columns: _columns, decimalMark: _mark, leftOutRows: _rows, ...others } = before ?? {};
  replace(key, {
    ...kind.start,
    ...others,
    data: tableInCase(table.value),
    columns: guessedColumns(kind, table.value),
  });
}

/** Takes a table out of the block, and what was typed for it. */
export function takeAway(key: TableKey): void {
  tableDrafts.patch({ [key]: undefined });
  if (tunnelBench.present.block[key] !== undefined) changeBlock({ [key]: undefined });
}

/** Changes what a table of the block has besides its rows; undefined takes a key away. */
export function changeTable(key: TableKey, change: Partial<TablePart>): void {
  const before: TablePart | undefined = tunnelBench.present.block[key];
  if (before !== undefined) replace(key, { ...before, ...change });
}

function replace(key: TableKey, part: TablePart): void {
  const entries = Object.entries(part).filter(([, value]) => value !== undefined);
  changeBlock({ [key]: Object.fromEntries(entries) } as Partial<TunnelBlockDocument>);
}

function sameColumns(a: DataTable, b: DataTable): boolean {
  return JSON.stringify(a.columns) === JSON.stringify(b.columns);
}
