import Papa from "papaparse";

/** What makes a spreadsheet take text for a formula. */
const formulaStart = /^[=+\-@\t\r]/;

/**
 * Flat rows as comma-separated values (RFC 4180) under the keys of the first one, an empty field for null; text that a
 * spreadsheet would take for a formula is disarmed. Lines end in CR LF.
 */
export function csvRows(rows: readonly Readonly<Record<string, string | number | boolean | null>>[]): string {
  return `${Papa.unparse([...rows], { newline: "\r\n", escapeFormulae: formulaStart })}\r\n`;
}
