import type { Bounds } from "../../document/quantity";
import { quotedText, shownNames } from "../../document/shownText";
import { fractionOf } from "../../numerics/degreesAndPercent";
import type { DecimalMark } from "../../tables/cellNumber";
import { type ColumnMapping, type MappedTable, mapColumns } from "../../tables/columnMapping";
import { type DataTable, rowNumber, type TableProblem } from "../../tables/dataTable";
import { gatheredProblems, PassedOver } from "../../tables/passedOver";
import { type MeasuredColumnKey, measuredBounds, measuredColumnQuantities } from "./measuredColumns";
import type { MeasuredPoint, SpeedDirection } from "./measurement";
import { coverage } from "./normalisedError";

/** Points read from a table, or everything that is wrong with it, by row and column. */
export type MeasuredReading =
  | {
      readonly ok: true;
      readonly points: readonly MeasuredPoint[];
      /** Rows that were passed over because something needed is missing in them, in sentences. */
      readonly skipped: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly TableProblem[] };

/** What a table is read with. */
export interface MeasuredTableChoices {
  readonly mapping: ColumnMapping<MeasuredColumnKey>;
  /** null to tell it from the cells. */
  readonly decimalMark: DecimalMark | null;
  /** Reynolds number per m/s, to read speeds; null where there is no fluid. */
  readonly reynoldsPerSpeed: number | null;
  /** What the table's Reynolds numbers and drag coefficients are multiplied by: see reference.ts. */
  readonly scale: { readonly reynolds: number; readonly drag: number };
  /** Of the set, degrees: rows of another incidence are passed over, never pooled. */
  readonly incidenceDegrees?: number;
}

/** Incidences that differ by less are the same, degrees. */
const sameIncidence = 0.05;

/**
 * The points of a table. A row in which the Reynolds number (or speed) or the drag coefficient is missing is passed over
 * and named.
 */
export function readMeasuredTable(table: DataTable, choices: MeasuredTableChoices): MeasuredReading {
  const columns = mapColumns(table, measuredColumnQuantities, choices.mapping, choices.decimalMark);
  reportUnusable(columns, table, choices);
  if (columns.problems.length > 0) return { ok: false, problems: columns.problems };
  const points: MeasuredPoint[] = [];
  const passed = new PassedOver();
  table.rows.forEach((cells, row) => {
    if (cells.every((cell) => cell === null || cell === "")) return;
    const before = columns.problems.length;
    const passedBefore = passed.notes.length + passed.count;
    const number = rowNumber(table, row);
    const own = choices.incidenceDegrees ?? 0;
    const incidence = columns.number(row, "incidenceDegrees") ?? own;
    if (Math.abs(incidence - own) > sameIncidence) {
      passed.add(number, `another incidence than the set's ${own} degrees; make a set for each incidence`);
      return;
    }
    const point = readPoint(columns, row, choices, (reason) => passed.add(number, reason));
    if (columns.problems.length > before || passed.notes.length + passed.count > passedBefore) return;
    const { reynolds, dragCoefficient } = point;
    if (reynolds === null || dragCoefficient === null) {
      passed.add(number, `no ${dragCoefficient === null ? "drag coefficient" : "Reynolds number"}`);
    } else points.push({ ...point, reynolds, dragCoefficient });
  });
  const skipped = passed.notes;
  if (columns.problems.length === 0 && points.length === 0) {
    const message = "no row has both a Reynolds number (or speed) and a drag coefficient that can be used";
    columns.report(null, null, skipped.length === 0 ? message : `${message}. ${skipped.join(" ")}`);
  }
  return columns.problems.length > 0
    ? { ok: false, problems: gatheredProblems(columns.problems, table) }
    : { ok: true, points, skipped };
}

type Columns = MappedTable<MeasuredColumnKey>;

function reportUnusable(columns: Columns, table: DataTable, { reynoldsPerSpeed }: MeasuredTableChoices): void {
  const known = `the columns are ${shownNames(table.columns)}`;
  if (!columns.has("reynoldsNumber") && !columns.has("speedMetresPerSecond")) {
    columns.report(null, null, `no column holds the Reynolds number or the speed; ${known}`);
  } else if (!columns.has("reynoldsNumber") && reynoldsPerSpeed === null) {
    columns.report(null, "speedMetresPerSecond", "speeds need a fluid, or a column of Reynolds numbers in their place");
  }
  if (!columns.has("dragCoefficient")) columns.report(null, null, `no column holds the drag coefficient; ${known}`);
}

function readPoint(
  columns: Columns,
  row: number,
  { reynoldsPerSpeed, scale }: MeasuredTableChoices,
  pass: (reason: string) => void,
) {
  const number = (key: keyof typeof measuredBounds): number | null => {
    const value = columns.number(row, key);
    if (value === null || inside(value, measuredBounds[key])) return value;
    pass(`${key} out of range; it must be ${rangeText(measuredBounds[key])}`);
    return null;
  };
  const speed = number("speedMetresPerSecond");
  const stated = number("reynoldsNumber");
  // Speeds are made Reynolds numbers on the width; only stated ones can be on another length.
  const reynolds =
    stated !== null
      ? stated * scale.reynolds
      : speed === null || reynoldsPerSpeed === null
        ? null
        : speed * reynoldsPerSpeed;
  if (reynolds !== null && !inside(reynolds, measuredBounds.reynoldsNumber)) {
    pass(`the Reynolds number on the width out of range; it must be ${rangeText(measuredBounds.reynoldsNumber)}`);
  }
  const drag = number("dragCoefficient");
  const uncertainty = readUncertainty(number, drag);
  return {
    reynolds,
    dragCoefficient: drag === null ? null : drag * scale.drag,
    standardUncertainty: uncertainty === null ? null : uncertainty * scale.drag,
    direction: readDirection(columns, row),
    strouhal: number("strouhalNumber"),
    basePressureCoefficient: number("basePressureCoefficient"),
    separationAngleDegrees: number("separationAngleDegrees"),
  };
}

/** Standard uncertainty in the table's own coefficient, from whichever column has one. */
function readUncertainty(
  number: (key: keyof typeof measuredBounds) => number | null,
  drag: number | null,
): number | null {
  const ofDrag = (percent: number | null) => (percent === null || drag === null ? null : fractionOf(percent) * drag);
  const standard = number("standardUncertainty") ?? ofDrag(number("standardUncertaintyPercent"));
  const expanded = number("expandedUncertainty") ?? ofDrag(number("expandedUncertaintyPercent"));
  return standard ?? (expanded === null ? null : expanded / coverage);
}

const directionWords: Readonly<Record<SpeedDirection, readonly string[]>> = {
  rising: ["rising", "up", "increasing"],
  falling: ["falling", "down", "decreasing"],
};

function readDirection(columns: Columns, row: number): SpeedDirection | null {
  const word = columns.text(row, "direction")?.toLowerCase();
  if (word === undefined) return null;
  for (const direction of ["rising", "falling"] as const) {
    if (directionWords[direction].includes(word)) return direction;
  }
  columns.report(row, "direction", `${quotedText(word)} is no direction; it must be rising or falling`);
  return null;
}

function inside(value: number, { above, from, to }: Bounds): boolean {
  return value <= to && (above === undefined ? value >= (from ?? 0) : value > above);
}

function rangeText({ above, from, to, unit }: Bounds): string {
  const range = above === undefined ? `from ${from} to ${to}` : `above ${above} and at most ${to}`;
  return unit === "" ? range : `${range} ${unit}`;
}
