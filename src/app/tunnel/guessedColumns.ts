import { columnHead } from "../../../shared/tables/columnHead";
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
    const found = table.columns.find((column) => {
      const { name, unit } = columnHead(column);
      const fits = commonNames[key]?.test(column.trim()) === true || commonNames[key]?.test(name) === true;
      // A head that carries a unit of something else is something else: "t (°C)" is no time.
      const quantity = quantities[key];
      return fits && !taken.has(column) && (unit === null || (quantity !== null && unitsOf(quantity).includes(unit)));
    });
    if (found === undefined) continue;
    taken.add(found);
    const { unit } = columnHead(found);
    mapping[key] = unit === null ? { column: found } : { column: found, unit };
  }
  return mapping;
}
