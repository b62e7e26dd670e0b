import Papa from "papaparse";
import type { TrialResult } from "./trialResult";

/** Columns of the rankings as CSV, in order. */
export const trialCsvColumns = [
  "activity",
  "place",
  "code",
  "name",
  "scored",
  "missingCells",
  "meanRank",
  "medianScore",
  "strength",
  "strengthLow",
  "strengthHigh",
  "firstShare",
  "test",
  "statistic",
  "degreesOfFreedom",
  "pValue",
  "pMethod",
  "kendallW",
  "shownBetterThan",
  "problem",
];

/** What makes a spreadsheet take text for a formula. */
const formulaStart = /^[=+\-@\t\r]/;

/**
 * The rankings as comma-separated values (RFC 4180): a line per activity (empty for the overall ranking) and puck, the
 * most liked first, the test repeated on each. Lines end in CR LF.
 */
export function trialCsv({ rankings, pucks }: TrialResult): string {
  const rows = rankings.flatMap(({ activity, standings, test, kendallW, pairs, problem, missingCells }) =>
    standings.map((standing, i) => ({
      activity: activity ?? "",
      place: i + 1,
      name: pucks.find(({ code }) => code === standing.code)?.name ?? "",
      ...standing,
      missingCells,
      test: test?.name ?? "",
      statistic: test?.statistic ?? null,
      degreesOfFreedom: test?.degreesOfFreedom ?? null,
      pValue: test?.pValue ?? null,
      pMethod: test?.pMethod ?? "",
      kendallW,
      shownBetterThan: pairs
        .filter(({ better, isShown }) => isShown && better === standing.code)
        .map(({ worse }) => worse)
        .join(" "),
      problem: problem ?? "",
    })),
  );
  const table = Papa.unparse(rows, { columns: trialCsvColumns, newline: "\r\n", escapeFormulae: formulaStart });
  return `${table}\r\n`;
}
