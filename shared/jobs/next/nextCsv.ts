import Papa from "papaparse";
import type { NextResult } from "./nextResult";

/** What makes a spreadsheet take text for a formula. */
const formulaStart = /^[=+\-@\t\r]/;

/**
 * The measurements as comma-separated values (RFC 4180): a line for each and each pair of designs that it may decide, an
 * empty field for null, lines ending in CR LF.
 */
export function nextCsv({ measurements }: NextResult): string {
  const none = { first: null, second: null, probability: null };
  const rows = measurements.flatMap(({ designs, decides, ...rest }) =>
    (decides.length === 0 ? [none] : decides).map(({ first, second, probability }) => ({
      ...rest,
      designs: designs.join("; "),
      first,
      second,
      decidesProbability: probability,
    })),
  );
  return `${Papa.unparse(rows, { newline: "\r\n", escapeFormulae: formulaStart })}\r\n`;
}
