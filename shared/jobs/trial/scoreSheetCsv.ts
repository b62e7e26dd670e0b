import Papa from "papaparse";
import { longColumns } from "./placeScores";
import type { PlanResult } from "./trialResult";

/** What makes a spreadsheet take text for a formula. */
const formulaStart = /^[=+\-@\t\r]/;

/** The plan as a table to fill in (RFC 4180): its columns are those that scores are read by. Codes only. */
export function scoreSheetCsv({ plan }: { readonly plan: Pick<PlanResult, "sessions"> }): string {
  const rows = plan.sessions.flatMap(({ player, activity, repeat, codes }) =>
    codes.map((code, i) => ({ player, activity, repeat, position: i + 1, code, score: "", comment: "" })),
  );
  const table = Papa.unparse(rows, { columns: [...longColumns], newline: "\r\n", escapeFormulae: formulaStart });
  return `${table}\r\n`;
}

/** Which code is which puck. To be kept from players and from whoever collects the scores. */
export function codeKeyCsv(pucks: readonly { readonly code: string; readonly name: string }[]): string {
  const table = Papa.unparse(
    pucks.map(({ code, name }) => ({ code, name })),
    { columns: ["code", "name"], newline: "\r\n", escapeFormulae: formulaStart },
  );
  return `${table}\r\n`;
}
