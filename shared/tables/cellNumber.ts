import { quotedText } from "../document/shownText";
import { type DataCell, type DataTable, isMissing } from "./dataTable";

export const decimalMarks = ["point", "comma"] as const;
export type DecimalMark = (typeof decimalMarks)[number];

/** A number, or the reason why a cell is none. */
export type CellNumber =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly reason: string };

/**
 * The number of a cell. Thousands may be set apart by spaces, apostrophes or the mark that is not the decimal one, in
 * groups of three.
 */
export function cellNumber(cell: string | number, mark: DecimalMark): CellNumber {
  if (typeof cell === "number") {
    return Number.isFinite(cell) ? { ok: true, value: cell } : { ok: false, reason: `${cell} is not a finite number` };
  }
  const shown = quotedText(cell);
  const [decimal, thousands] = mark === "point" ? [".", ","] : [",", "."];
  let text = cell.trim().replace(/\u2212/g, "-");
  text = text.replace(/(?<=\d)[\u0020\u00a0\u2009\u202f'\u2019](?=\d{3}(?!\d))/g, "");
  if (text.includes(thousands)) {
    const grouped = new RegExp(`^[+-]?\\d{1,3}(?:\\${thousands}\\d{3})+(?:\\${decimal}\\d+)?$`);
    if (!grouped.test(text)) {
      const found = mark === "point" ? "a comma" : "a point";
      return { ok: false, reason: `${shown} has ${found}, but the table's decimal mark is the ${mark}` };
    }
    text = text.split(thousands).join("");
  }
  if (decimal === ",") text = text.replace(",", ".");
  if (!/^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/.test(text)) {
    return { ok: false, reason: `${shown} is not a number` };
  }
  const value = Number(text);
  return Number.isFinite(value) ? { ok: true, value } : { ok: false, reason: `${shown} is too large a number` };
}

/**
 * The decimal mark of a table's number columns. A cell such as 12,5 or 1.234,5 shows it; one such as 1,234 could be
 * either. Null where cells with commas show nothing and the separator gives no hint: then a person must say.
 */
export function decimalMarkOf({ rows, separator }: DataTable, numberColumns: readonly number[]): DecimalMark | null {
  let points = 0;
  let commas = 0;
  let undecided = 0;
  for (const row of rows) {
    for (const column of numberColumns) {
      const cell: DataCell | undefined = row[column];
      if (typeof cell !== "string" || isMissing(cell)) continue;
      const [lastPoint, lastComma] = [cell.lastIndexOf("."), cell.lastIndexOf(",")];
      if (lastPoint < 0 && lastComma < 0) continue;
      if (lastPoint >= 0 && lastComma >= 0) {
        if (lastPoint > lastComma) points++;
        else commas++;
      } else if (lastComma >= 0) {
        if (/^[+-]?[1-9]\d{0,2}(?:,\d{3})+$/.test(cell.trim())) undecided++;
        else commas++;
      } else if (/^[+-]?[1-9]\d{0,2}(?:\.\d{3}){2,}$/.test(cell.trim())) commas++;
      else points++;
    }
  }
  if (commas > 0 && commas >= points) return "comma";
  if (points > 0 || undecided === 0) return "point";
  return separator === undefined || separator === "," ? null : "comma";
}
