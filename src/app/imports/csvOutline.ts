import Papa from "papaparse";
import { problem, type Result } from "../../../shared/result";
import { largestImportBytes, makeOutline, type Outline } from "./outline";

/**
 * Reads an outline from comma-, semicolon- or tab-separated text: two columns x and y, a heading line if there is one.
 */
export function csvOutline(text: string): Result<Outline> {
  if (text.length > largestImportBytes) {
    return problem("import", `The file has ${text.length} characters; at most ${largestImportBytes} are read.`);
  }
  const { data } = Papa.parse<string[]>(text.trim(), {
    skipEmptyLines: "greedy",
    comments: "#",
    delimitersToGuess: [",", ";", "\t", " "],
  });
  const rows = data.map((cells) => cells.map((cell) => cell.trim()).filter((cell) => cell !== ""));
  const hasHeading = rows.length > 0 && rows[0].some((cell) => Number.isNaN(decimal(cell)));
  const body = hasHeading ? rows.slice(1) : rows;
  const points: [number, number][] = [];
  for (const [i, cells] of body.entries()) {
    const line = i + (hasHeading ? 2 : 1);
    if (cells.length < 2) return problem("import", `Row ${line} has ${cells.length} column; two are needed, x and y.`);
    const x = decimal(cells[0]);
    const y = decimal(cells[1]);
    if (!Number.isFinite(x) || !Number.isFinite(y)) {
      return problem("import", `Row ${line} is "${cells.slice(0, 2).join(", ")}"; both must be finite numbers.`);
    }
    points.push([x, y]);
  }
  return makeOutline(points, hasHeading ? headingUnit(rows[0].join(" ")) : null);
}

function decimal(cell: string): number {
  return cell === "" ? Number.NaN : Number(cell.replace(",", "."));
}

function headingUnit(heading: string): Outline["unitKey"] {
  const found = /\b(mm|cm|in|m)\b|(millimetres|metres)/i.exec(heading.replace(/_/g, " "));
  if (found === null) return /metres/i.test(heading) ? "m" : null;
  const word = found[0].toLowerCase();
  if (word === "millimetres") return "mm";
  return word === "metres" ? "m" : (word as Outline["unitKey"]);
}
