import * as z from "zod";
import { strictRecord, text } from "../document/quantity";
import { decimalMarks } from "./cellNumber";
import { mostTableColumns, mostTableRows } from "./csvTable";
import type { DataTable } from "./dataTable";

const cell = z.union([z.string(), z.number(), z.null()], { error: "it must be text, a number or null" });
const rowsRule = `it must be a list of at most ${mostTableRows} rows`;
const columnsRule = `it must be a list of 1 to ${mostTableColumns} column names`;

const headerRowRule = "it must be a whole number of at least 1";

const inlineTable = strictRecord("a table", {
  columns: z
    .array(z.string({ error: "it must be text" }), { error: columnsRule })
    .min(1, columnsRule)
    .max(mostTableColumns, columnsRule)
    .describe("Names of the columns"),
  rows: z
    .array(z.array(cell, { error: "it must be a list of cells" }), { error: rowsRule })
    .max(mostTableRows, rowsRule)
    .describe("Rows of cells as they were typed; null or an empty text is a missing value"),
  headerRow: z
    .int({ error: headerRowRule })
    .gte(1, headerRowRule)
    .optional()
    .describe("Number of the header's row in the file that it came from"),
  separator: z
    .enum([",", ";", "\t"], { error: "it must be a comma, a semicolon or a tab" })
    .optional()
    .describe("What separated the cells in the file that it came from"),
});

/** The rows of a table, or the path of a CSV file from the case file's folder. */
export function tableData(description: string) {
  return z
    .union([inlineTable, text("Path of a CSV file, from the case file's folder", 500)], {
      error: "it must be a table, or the path of a CSV file",
    })
    .describe(description);
}

export const decimalMarkDocument = z
  .enum(decimalMarks, { error: 'it must be "point" or "comma"' })
  .optional()
  .describe("Decimal mark; told from the cells when left out");

/**
 * The keys of a table in a case file: the rows themselves or the path of a CSV file, which column holds what, and the
 * decimal mark.
 * @param words what each key of the table means
 */
export function tableKeys<Key extends string>(keys: readonly Key[], words: Readonly<Record<Key, string>>) {
  const mapped = (key: Key) =>
    strictRecord("a column", {
      column: text("Name of the column", 200),
      unit: text("Unit of its numbers, for instance km/h", 20).optional(),
    })
      .describe(words[key])
      .optional();
  const mapping = Object.fromEntries(keys.map((key) => [key, mapped(key)])) as Record<Key, ReturnType<typeof mapped>>;
  return {
    data: tableData("The rows, or the path of a CSV file from the case file's folder"),
    columns: strictRecord("a column mapping", mapping)
      .optional()
      .describe("Which column holds what; a key that is left out is looked for under its own name"),
    decimalMark: decimalMarkDocument,
  };
}

/** The rows of a table that stand in the case; null for the path of a file that was not put in place. */
export function inlineRows(data: DataTable | string): DataTable | null {
  return typeof data === "string" ? null : data;
}
