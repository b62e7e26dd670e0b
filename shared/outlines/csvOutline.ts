import Papa from "papaparse";
import { problem, type Result, success } from "../result";
import {
  apart,
  extentsOf,
  mostOutlinePoints,
  type Outline,
  type OutlineUnit,
  type Place,
  samePlace,
  tooLarge,
} from "./outline";
import { pointSides } from "./pointSides";

/** Parts of the smaller extent between which the fitting tolerance is kept. */
const finestTolerance = 2e-6;
const coarsestTolerance = 1e-3;
/** Rounding to a last digit moves a point by up to 0.71 of it. */
const roundedBy = 0.75;

/**
 * Reads an outline from comma-, semicolon-, tab- or space-separated text: two columns x and y, by their heads or the
 * first two, with or without a line of units. Lines, arcs and curves are told from the points, within what the digits of
 * the file leave open.
 */
export function csvOutline(text: string): Result<Outline> {
  const large = tooLarge(text);
  if (large !== null) return large;
  const lines = splitLines(text.replace(/^\uFEFF/, ""));
  const firstNumbers = lines.findIndex(({ cells }) => cells.length >= 2 && cells.every(isNumberText));
  if (firstNumbers < 0) {
    const [first] = lines;
    if (first === undefined)
      return problem("outline", "the file is empty; it must have a line for each point, x and y");
    return problem(
      "outline",
      `row ${first.row} has ${first.cells.length} ${first.cells.length === 1 ? "column" : "columns"} and no row has two numbers; two columns are needed, x and y`,
    );
  }
  const head = lines.slice(0, firstNumbers);
  if (head.length > 3) {
    return problem("outline", `row ${head[0].row} is ${shown(head[0].cells)}; a point needs two numbers, x and y`);
  }
  const body = lines.slice(firstNumbers);
  const [xColumn, yColumn] = coordinateColumns(head);
  const points: Place[] = [];
  for (const { row, cells } of body) {
    if (cells.length < 2) return problem("outline", `row ${row} has ${cells.length} column; two are needed, x and y`);
    const [x, y] = [decimal(cells[xColumn] ?? ""), decimal(cells[yColumn] ?? "")];
    if (!(Number.isFinite(x) && Number.isFinite(y))) {
      return problem(
        "outline",
        `row ${row} is ${shown([cells[xColumn] ?? "", cells[yColumn] ?? ""])}; both must be finite numbers`,
      );
    }
    points.push([x, y]);
    if (points.length > mostOutlinePoints) {
      return problem(
        "outline",
        `the file has more than ${mostOutlinePoints} points; it must have at most ${mostOutlinePoints}`,
      );
    }
  }
  const kept = tidied(points);
  if (kept.length < 3) {
    return problem("outline", `the outline has ${kept.length} different points; it must have 3 or more`);
  }
  const smaller = Math.min(...extentsOf(kept));
  if (!(smaller > 0)) return problem("outline", "all points lie on one line; they must go once round the section");
  const digit = lastDigit(body.flatMap(({ cells }) => [cells[xColumn], cells[yColumn]]));
  const tolerance = Math.min(Math.max(roundedBy * digit, finestTolerance * smaller), coarsestTolerance * smaller);
  const { sides, fitted } = pointSides(kept, tolerance);
  const dropped = points.length - kept.length;
  return success({
    sides,
    unit: unitOf(head),
    fitted,
    remarks: dropped > 1 ? [`${dropped} repeated points were dropped.`] : [],
  });
}

interface Line {
  readonly row: number;
  readonly cells: readonly string[];
}

function splitLines(text: string): Line[] {
  const rows = text.split(/\r\n|\n|\r/).map((line, i) => ({ row: i + 1, line: line.trim() }));
  const used = rows.filter(({ line }) => line !== "" && !line.startsWith("#"));
  const sample = used.slice(0, 20).map(({ line }) => line);
  const separator = [";", "\t", ","].find((mark) =>
    sample.some((line) => line.includes(mark) && !isDecimalComma(line, mark)),
  );
  return used.map(({ row, line }) => {
    if (separator === undefined) return { row, cells: line.split(/\s+/) };
    const [cells = []] = Papa.parse<string[]>(line, { delimiter: separator }).data;
    return { row, cells: cells.map((cell) => cell.trim()).filter((cell) => cell !== "") };
  });
}

/** Whether the commas of a line are decimal marks of numbers that spaces set apart: "12,5 3,25". */
function isDecimalComma(line: string, mark: string): boolean {
  return mark === "," && /^\S*\d,\d+\s+[+-]?\d+(?:,\d+)?$/.test(line);
}

function isNumberText(cell: string): boolean {
  return /^[+-]?(?:\d+[.,]?\d*|[.,]\d+)(?:e[+-]?\d+)?$/i.test(cell);
}

function decimal(cell: string): number {
  return isNumberText(cell) ? Number(cell.replace(",", ".")) : Number.NaN;
}

/** Indices of the columns whose heads begin with x and y, else the first two. */
function coordinateColumns(head: readonly Line[]): readonly [number, number] {
  for (const { cells } of head) {
    const x = cells.findIndex((cell) => /^"?x\b|^x[_ ([A-Z]/i.test(cell));
    const y = cells.findIndex((cell) => /^"?y\b|^y[_ ([A-Z]/i.test(cell));
    if (x >= 0 && y >= 0) return [x, y];
  }
  return [0, 1];
}

function unitOf(head: readonly Line[]): OutlineUnit | null {
  const words = head
    .flatMap(({ cells }) => cells)
    .join(" ")
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replace(/[_()[\]]/g, " ")
    .toLowerCase();
  const found = /\b(?:(mm|millimet(?:re|er)s?)|(cm|centimet(?:re|er)s?)|(in|inch(?:es)?)|(m|met(?:re|er)s?))\b/.exec(
    words,
  );
  if (found === null) return null;
  return found[1] !== undefined ? "mm" : found[2] !== undefined ? "cm" : found[3] !== undefined ? "in" : "m";
}

/** Size of the last digit that the numbers of a file have, by the one with the most digits. */
function lastDigit(cells: readonly (string | undefined)[]): number {
  let digits = 0;
  for (const cell of cells) {
    const [, fraction = "", exponent = "0"] = /[.,](\d+)(?:e([+-]?\d+))?$/i.exec(cell ?? "") ?? [];
    digits = Math.max(digits, fraction.length - Number(exponent));
  }
  return 10 ** -digits;
}

/** Without points that repeat their neighbour, and without the closing one. */
function tidied(points: readonly Place[]): Place[] {
  const near = samePlace * Math.max(...extentsOf(points));
  const kept: Place[] = [];
  for (const point of points) {
    if (kept.length === 0 || apart(point, kept[kept.length - 1]) > near) kept.push(point);
  }
  while (kept.length > 1 && apart(kept[0], kept[kept.length - 1]) <= near) kept.pop();
  return kept;
}

function shown(cells: readonly string[]): string {
  const text = cells.join(", ");
  return JSON.stringify(text.length > 40 ? `${text.slice(0, 40)}...` : text);
}
