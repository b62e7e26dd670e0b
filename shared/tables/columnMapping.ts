import { quotedText, shownNames } from "../document/shownText";
import { cellNumber, type DecimalMark, decimalMarkOf } from "./cellNumber";
import { type ColumnQuantity, fromUnit, unitsOf } from "./columnUnits";
import { type DataTable, isMissing, rowNumber, type TableProblem } from "./dataTable";

/** Which column of a table holds what, and in which unit; a key that is left out is looked for under its own name. */
export type ColumnMapping<Key extends string> = Readonly<
  Partial<Record<Key, { readonly column: string; readonly unit?: string | undefined }>>
>;

/** What a reader asks of a table: the quantity of each key, null for text. */
export type WantedColumns<Key extends string> = Readonly<Record<Key, ColumnQuantity | null>>;

/** A table with its columns found. */
export interface MappedTable<Key extends string> {
  has(key: Key): boolean;
  /** The cell as text without spaces around it; null where it is missing. */
  text(row: number, key: Key): string | null;
  /** In the key's own unit; null where it is missing. What is no number is reported and null as well. */
  number(row: number, key: Key): number | null;
  report(row: number | null, key: Key | null, message: string): void;
  readonly problems: readonly TableProblem[];
  readonly decimalMark: DecimalMark;
}

/**
 * Finds the columns of a table.
 * @param decimalMark null to tell it from the cells
 */
export function mapColumns<Key extends string>(
  table: DataTable,
  wanted: WantedColumns<Key>,
  mapping: ColumnMapping<Key>,
  decimalMark: DecimalMark | null,
): MappedTable<Key> {
  const problems: TableProblem[] = [];
  const keys = Object.keys(wanted) as Key[];
  const places = new Map<Key, { readonly index: number; readonly convert: (value: number) => number }>();
  for (const key of keys) {
    const named = mapping[key];
    const index = columnIndex(table, named?.column ?? key);
    const quantity = wanted[key];
    if (named !== undefined && index < 0) {
      const message = `there is no column ${quotedText(named.column)} for ${key}; the columns are ${shownNames(table.columns)}`;
      problems.push({ row: null, column: named.column, message });
    }
    const convert = quantity === null || named?.unit === undefined ? (x: number) => x : fromUnit(quantity, named.unit);
    if (convert === undefined) {
      const units = unitsOf(quantity ?? "plain").join(", ");
      problems.push({
        row: null,
        column: named?.column ?? key,
        message: `the unit "${named?.unit}" is not one of ${units}`,
      });
    }
    if (index >= 0) places.set(key, { index, convert: convert ?? ((x) => x) });
  }
  const numeric = keys.flatMap((key) => (wanted[key] === null ? [] : (places.get(key)?.index ?? [])));
  const found = decimalMark ?? decimalMarkOf(table, numeric);
  if (found === null) {
    problems.push({
      row: null,
      column: null,
      message:
        "its commas could be decimal marks or set thousands apart; say which decimal mark it has, point or comma",
    });
  }
  const mark = found ?? "point";
  const columnOf = (key: Key) => table.columns[places.get(key)?.index ?? -1] ?? key;
  const report = (row: number | null, key: Key | null, message: string) => {
    problems.push({
      row: row === null ? null : rowNumber(table, row),
      column: key === null ? null : columnOf(key),
      message,
    });
  };
  return {
    has: (key) => places.has(key),
    text: (row, key) => {
      const place = places.get(key);
      const cell = place === undefined ? null : table.rows[row][place.index];
      return isMissing(cell) || cell === undefined || cell === null ? null : String(cell).trim();
    },
    number: (row, key) => {
      const place = places.get(key);
      const cell = place === undefined ? null : table.rows[row][place.index];
      if (place === undefined || isMissing(cell) || cell === undefined || cell === null) return null;
      const value = cellNumber(cell, mark);
      if (value.ok) return place.convert(value.value);
      // Without a known mark every cell would be wrong in the same way: one message says it.
      if (found !== null) report(row, key, value.reason);
      return null;
    },
    report,
    problems,
    decimalMark: mark,
  };
}

/** The column of a name; case and spaces around it do not matter. */
export function columnIndex({ columns }: Pick<DataTable, "columns">, name: string): number {
  const plain = (text: string) => text.trim().toLowerCase();
  return columns.findIndex((column) => plain(column) === plain(name));
}
