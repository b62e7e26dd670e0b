import Papa from "papaparse";
import type { Comparison } from "./comparison";

/** What makes a spreadsheet take text for a formula. */
const formulaStart = /^[=+\-@\t\r]/;

/** The comparisons as comma-separated values (RFC 4180), an empty field for null, lines ending in CR LF. */
export function comparisonCsv(comparisons: readonly Comparison[]): string {
  const rows = comparisons.map(({ condition, changePercent, ranking, ...rest }) => {
    const own = ranking?.find(({ name }) => name === rest.first);
    return {
      first: rest.first,
      second: rest.second,
      ...condition,
      unknown: condition.unknown.join("; "),
      measuredPointCount: rest.measuredPointCount,
      changePercentLow: changePercent?.low ?? null,
      changePercentExpected: changePercent?.expected ?? null,
      changePercentHigh: changePercent?.high ?? null,
      probabilityLess: rest.probabilityLess,
      decided: rest.decided,
      probabilityBest: own?.probabilityBest ?? null,
      expectedRegretPercent: own?.expectedRegretPercent ?? null,
      problem: rest.problem,
    };
  });
  return `${Papa.unparse(rows, { newline: "\r\n", escapeFormulae: formulaStart })}\r\n`;
}
