import Papa from "papaparse";
import { quotedText, shownText } from "../document/shownText";
import { problem, type Result, success } from "../result";
import { isUnitsRow, withUnits } from "./columnHead";
import type { DataTable } from "./dataTable";

/** What a table may have at most, so that no file can hang the program. */
export const mostTableBytes = 4_000_000;
export const mostTableRows = 20_000;
export const mostTableColumns = 1000;
export const longestCell = 500;

const separators = [",", ";", "\t"] as const;

/**
 * Reads comma-, semicolon-, tab- or space-separated values with a header line: with or without byte-order mark, any line
 * ends, quoted cells. A row of units under the heads goes into them: "v" over "m/s" is "v (m/s)". Lines that begin with # above the header are remarks. Cells stay as they were typed, without spaces
 * around them; empty lines are left out but counted.
 * @returns a problem when there is no header, a name stands twice, a row is too long or the file too large
 */
export function readCsvTable(text: string): Result<DataTable> {
  if (text.length > mostTableBytes) {
    return problem("table", `the table has ${text.length} characters; it must have at most ${mostTableBytes}`);
  }
  const clean = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
  const remarks = /^(?:[ \t]*(?:#[^\n]*)?\n)*/.exec(clean)?.[0] ?? "";
  const headerRow = 1 + (remarks.match(/\n/g)?.length ?? 0);
  const body = clean.slice(remarks.length);
  const separator = separatorOf(body.split("\n", 1)[0]);
  const isSpaced = separator === null;
  const parsed = isSpaced ? spacedRows(body) : Papa.parse<string[]>(body, { delimiter: separator, newline: "\n" });
  const quote = parsed.errors.find(({ type }) => type === "Quotes");
  if (quote !== undefined) {
    return problem(
      "table",
      `row ${headerRow + (quote.row ?? 0)}: ${quote.message.toLowerCase()}; a quoted cell must end with a quotation mark`,
    );
  }
  const [header = [], ...rest] = parsed.data;
  const named = header.map((name) => name.trim().replace(/\s+/g, " "));
  while (named.at(-1) === "") named.pop();
  const hasUnits = rest.length > 0 && isUnitsRow(rest[0]);
  const columns = hasUnits ? withUnits(named, rest[0]) : named;
  if (columns.length === 0) return problem("table", "the table is empty; its first line must name the columns");
  if (columns.length > mostTableColumns) {
    return problem("table", `the table has ${columns.length} columns; it must have at most ${mostTableColumns}`);
  }
  const twice = columns.find((name, i) => columns.indexOf(name) !== i);
  if (twice !== undefined) {
    return problem(
      "table",
      `row ${headerRow}: the column name ${quotedText(twice)} stands twice; each column needs its own`,
    );
  }
  const lastHeadRow = headerRow + (hasUnits ? 1 : 0);
  const rows = (hasUnits ? rest.slice(1) : rest).map((row) => row.map((cell) => cell.trim()));
  while (rows.length > 0 && isEmpty(rows[rows.length - 1])) rows.pop();
  if (rows.length > mostTableRows) {
    return problem("table", `the table has ${rows.length} rows; it must have at most ${mostTableRows}`);
  }
  for (const [i, row] of rows.entries()) {
    const beyond = row.findIndex((cell, j) => j >= columns.length && cell !== "");
    if (beyond >= 0) {
      return problem(
        "table",
        `row ${lastHeadRow + 1 + i} has ${beyond + 1} cells and the header ${columns.length}; a decimal comma in a comma-separated file must be quoted`,
      );
    }
    const long = row.findIndex((cell) => cell.length > longestCell);
    if (long >= 0) {
      return problem(
        "table",
        `row ${lastHeadRow + 1 + i}, column ${shownText(columns[long])}: the cell has ${row[long].length} characters; it must have at most ${longestCell}`,
      );
    }
  }
  return success({
    columns,
    rows: rows.map((row) => row.slice(0, columns.length)),
    ...(lastHeadRow === 1 ? {} : { headerRow: lastHeadRow }),
    // Columns set apart by spaces are kept as tabs, which hint at decimal commas as spaces do.
    ...(separator === "," ? {} : { separator: separator ?? "\t" }),
  });
}

/** The table as text again, with the separator that it came with, for editing and for files. */
export function csvOfTable({ columns, rows, separator }: DataTable): string {
  const lines = [columns, ...rows.map((row) => columns.map((_, i) => row[i] ?? ""))];
  return `${Papa.unparse(
    lines.map((line) => [...line]),
    { newline: "\r\n", ...(separator === undefined ? {} : { delimiter: separator }) },
  )}\r\n`;
}

/** The separator that occurs most in the header outside quotation marks; null where none does and spaces set columns apart. */
function separatorOf(header: string): (typeof separators)[number] | null {
  const bare = header.replace(/"[^"]*"/g, "");
  const count = (separator: string) => bare.split(separator).length - 1;
  const best = separators.reduce((most, next) => (count(next) > count(most) ? next : most));
  return count(best) > 0 || !/\S\s+\S/.test(header.trim()) ? best : null;
}

/** Rows of columns that spaces set apart: two or more where heads have spaces of their own, any number in the rows. */
function spacedRows(body: string): { readonly data: string[][]; readonly errors: Papa.ParseError[] } {
  const lines = body.split("\n").map((line) => line.trim());
  const words = (line: string) => (line === "" ? [] : (line.match(/"[^"]*"|[^\s"]+/g) ?? []).map(unquoted));
  const wide = (line: string) => (line === "" ? [] : line.split(/\s{2,}|\t/).map(unquoted));
  const [first, ...rest] = lines;
  const counts = rest.filter((line) => line !== "").map((line) => words(line).length);
  const most = counts.length === 0 ? words(first).length : Math.max(...counts.slice(0, 50));
  const header = [wide(first), words(first)].find((cells) => cells.length === most) ?? words(first);
  const cells = (line: string) =>
    words(line).length === header.length ? words(line) : wide(line).length === header.length ? wide(line) : words(line);
  return { data: [header, ...rest.map(cells)], errors: [] };
}

function unquoted(cell: string): string {
  return cell.replace(/^"|"$/g, "");
}

function isEmpty(row: readonly string[]): boolean {
  return row.every((cell) => cell === "");
}
