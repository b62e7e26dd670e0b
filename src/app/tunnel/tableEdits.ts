import type { TunnelBlockDocument } from "../../../shared/jobs/tunnel/tunnelBlockDocument";
import { csvOfTable } from "../../../shared/tables/csvTable";
import type { TableColumns, TableKey } from "./tableKinds";

/** Text that cannot be taken as a table yet, as it was typed, with the reason. */
export interface TableDraft {
  readonly text: string;
  readonly message: string;
}

/** The drafts; where there is none the block's own table is shown. */
export type TableDrafts = Readonly<Partial<Record<TableKey, TableDraft>>>;

/** The text of a table as it is edited. */
export function tableText(block: TunnelBlockDocument, drafts: TableDrafts, key: TableKey): string {
  const draft = drafts[key];
  if (draft !== undefined) return draft.text;
  const data = block[key]?.data;
  return data === undefined || typeof data === "string" ? "" : csvOfTable(data);
}

/** The mapping with another column for a key, and its unit; an empty name leaves the key to be found by its own name. */
export function mappedColumns(
  columns: TableColumns | undefined,
  key: string,
  column: string,
  unit?: string,
): TableColumns {
  const { [key]: _old, ...others } = columns ?? {};
  return column === "" ? others : { ...others, [key]: unit === undefined ? { column } : { column, unit } };
}
