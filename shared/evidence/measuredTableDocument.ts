import * as z from "zod";
import { strictRecord, text } from "../case/quantity";
import { mostTableColumns, mostTableRows } from "../tunnel/csvTable";
import { type MeasuredColumnKey, measuredColumnKeys, measuredColumnWords } from "./measuredColumns";

const cellRule = "it must be text, a number or null";
const cell = z.union([z.string(), z.number(), z.null()], { error: cellRule });
const rowsRule = `it must be a list of at most ${mostTableRows} rows`;
const columnsRule = `it must be a list of 1 to ${mostTableColumns} column names`;

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
  headerRow: z.int().gte(1).optional().describe("Number of the header's row in the file that it came from"),
  separator: z
    .enum([",", ";", "\t"], { error: "it must be a comma, a semicolon or a tab" })
    .optional()
    .describe("What separated the cells in the file that it came from"),
});

function mapped(key: MeasuredColumnKey) {
  return strictRecord("a column", {
    column: text("Name of the column", 200),
    unit: text("Unit of its numbers, for instance km/h", 20).optional(),
  })
    .describe(measuredColumnWords[key])
    .optional();
}

const mapping = Object.fromEntries(measuredColumnKeys.map((key) => [key, mapped(key)])) as Record<
  MeasuredColumnKey,
  ReturnType<typeof mapped>
>;

/** A table of measured points: the rows themselves, or the path of a CSV file beside the case file. */
export const measuredTableDocument = strictRecord("a table of measured points", {
  data: z
    .union([inlineTable, text("Path of a CSV file, from the case file's folder", 500)], {
      error: "it must be a table, or the path of a CSV file",
    })
    .describe("The rows, or the path of a CSV file from the case file's folder"),
  columns: strictRecord("a column mapping", mapping)
    .optional()
    .describe("Which column holds what; a key that is left out is looked for under its own name"),
  decimalMark: z
    .enum(["point", "comma"], { error: 'it must be "point" or "comma"' })
    .optional()
    .describe("Decimal mark; told from the cells when left out"),
}).describe("Measured points as a table");

export type MeasuredTableDocument = z.infer<typeof measuredTableDocument>;
