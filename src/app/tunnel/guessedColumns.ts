import { columnIndex } from "../../../shared/tables/columnMapping";
import { unitsOf } from "../../../shared/tables/columnUnits";
import type { DataTable } from "../../../shared/tables/dataTable";
import type { TableColumns, TableKind } from "./tableKinds";

/** A first guess of a table's columns, which the person confirms; columns by the keys' own names need none. */
export function guessedColumns(
  { columnKeys, commonNames, quantities }: Pick<TableKind, "columnKeys" | "commonNames" | "quantities">,
  table: DataTable,
): TableColumns {
  const mapping: Record<string, { column: string; unit?: string }> = {};
  const taken = new Set<string>();
  for (const key of columnKeys) {
    if (columnIndex(table, key) >= 0) continue;
    const found = table.columns.find((column) => commonNames[key]?.test(column.trim()) === true && !taken.has(column));
    if (found === undefined) continue;
    taken.add(found);
    const unit = statedUnit(found, quantities[key]);
    mapping[key] = unit === null ? { column: found } : { column: found, unit };
  }
  return mapping;
}

/** The unit that a column's name ends with, "v [km/h]" or "v (km/h)", where the quantity has it. */
function statedUnit(column: string, quantity: TableKind["quantities"][string]): string | null {
  const unit = /[[(]\s*([^\])]+?)\s*[\])]\s*$/.exec(column)?.[1];
  if (unit === undefined || quantity === null) return null;
  return unitsOf(quantity).find((known) => known.toLowerCase() === unit.toLowerCase()) ?? null;
}
