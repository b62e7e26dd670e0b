import { quotedText, shownNames } from "../../document/shownText";
import type { DecimalMark } from "../../tables/cellNumber";
import { type ColumnMapping, type MappedTable, mapColumns, type WantedColumns } from "../../tables/columnMapping";
import { type DataTable, rowNumber, type TableProblem } from "../../tables/dataTable";
import { gatheredProblems, PassedOver } from "../../tables/passedOver";
import type { RunKind } from "./plannedTest";
import type { SpeedDirection } from "./predictedDrag";
import type { RunColumnKey } from "./runColumns";

/** The quantity of each column of a run table; null for text. */
export const runColumnQuantities: WantedColumns<RunColumnKey> = {
  run: null,
  kind: null,
  direction: null,
  aimSpeedMetresPerSecond: "speed",
  repeat: null,
  timeMinutes: "time",
  speedMetresPerSecond: "speed",
  dynamicPressurePascals: "pressure",
  temperatureCelsius: "temperature",
  staticPressurePascals: "pressure",
  relativeHumidityPercent: "humidity",
  forceNewtons: "force",
  incidenceDegrees: "angle",
  remark: null,
};

/** One reading, in the units of the keys of the run table. */
export interface RunReading {
  /** Row in the file. */
  readonly row: number;
  readonly kind: RunKind;
  readonly direction: SpeedDirection;
  readonly aimSpeed: number | null;
  /** min. */
  readonly time: number | null;
  /** m/s. */
  readonly speed: number | null;
  /** Pa. */
  readonly dynamicPressure: number | null;
  /** °C. */
  readonly temperature: number | null;
  /** Pa, absolute. */
  readonly staticPressure: number | null;
  /** %. */
  readonly humidity: number | null;
  /** N. */
  readonly force: number;
}

export interface RunTableReading {
  readonly readings: readonly RunReading[];
  /** What must be put right before the table can be used. */
  readonly problems: readonly TableProblem[];
  /** Rows that were left out on purpose or for a missing value, and what was assumed. */
  readonly notes: readonly string[];
  readonly decimalMark: DecimalMark;
}

const kindWords: Readonly<Record<string, RunKind>> = {
  zero: "zero",
  tare: "tare",
  support: "tare",
  model: "model",
  run: "model",
};

const directionWords: Readonly<Record<string, SpeedDirection>> = {
  rising: "rising",
  up: "rising",
  increasing: "rising",
  falling: "falling",
  down: "falling",
  decreasing: "falling",
};

/** Possible values; what lies beyond is a slip of unit or of the decimal mark. */
const limits = {
  aimSpeedMetresPerSecond: [0, 1000, "m/s"],
  speedMetresPerSecond: [0, 1000, "m/s"],
  dynamicPressurePascals: [0, 1e6, "Pa"],
  temperatureCelsius: [-60, 200, "°C"],
  staticPressurePascals: [1e3, 1e7, "Pa"],
  relativeHumidityPercent: [0, 100, "%"],
  forceNewtons: [-1e5, 1e5, "N"],
  incidenceDegrees: [-180, 180, "degrees"],
  timeMinutes: [0, 1e6, "min"],
} as const satisfies Partial<Record<RunColumnKey, readonly [number, number, string]>>;
type LimitedKey = keyof typeof limits;

/** Incidences that differ by less are one, degrees. */
const sameIncidence = 0.05;

/**
 * Reads a run table: every cell that is wrong is named by row and column, rows without a force or without speed and
 * dynamic pressure are left out with a note.
 * @param leftOut rows, as counted in the file, that are not to be used
 */
export function readRunTable(
  table: DataTable,
  mapping: ColumnMapping<RunColumnKey>,
  decimalMark: DecimalMark | null,
  leftOut: readonly number[] = [],
): RunTableReading {
  const mapped = mapColumns(table, runColumnQuantities, mapping, decimalMark);
  const notes: string[] = [];
  if (!mapped.has("forceNewtons")) {
    mapped.report(null, null, missingColumn("forceNewtons", table));
  }
  if (!mapped.has("speedMetresPerSecond") && !mapped.has("dynamicPressurePascals")) {
    mapped.report(null, null, missingColumn("speedMetresPerSecond or dynamicPressurePascals", table));
  }
  if (mapped.problems.length > 0)
    return { readings: [], problems: mapped.problems, notes, decimalMark: mapped.decimalMark };
  if (!mapped.has("kind")) notes.push("No column says what a row is: all rows are taken as runs of the model.");
  if (!mapped.has("direction"))
    notes.push("No column gives the direction of speed: it is told from the order of the rows.");
  const missing: string[] = [];
  const passed = new PassedOver();
  const incidence = testedIncidence(mapped, table, leftOut);
  const readings: RunReading[] = [];
  let before: { readonly speed: number; readonly direction: SpeedDirection } | null = null;
  for (let row = 0; row < table.rows.length; row++) {
    if (leftOut.includes(rowNumber(table, row))) continue;
    if (table.rows[row].every((cell) => cell === null || String(cell).trim() === "")) continue;
    let isPassed = false;
    const limited = (key: LimitedKey) => {
      const value = mapped.number(row, key);
      const [low, high, unit] = limits[key];
      if (value === null || (value >= low && value <= high)) return value;
      passed.add(rowNumber(table, row), `${key} not possible; it must be from ${low} to ${high} ${unit}`);
      isPassed = true;
      return null;
    };
    const kind = word(mapped.text(row, "kind"), kindWords, "model");
    if (kind === null) {
      mapped.report(row, "kind", `${quotedText(mapped.text(row, "kind") ?? "")} is none of zero, tare and model`);
      continue;
    }
    const directionText = mapped.text(row, "direction");
    const stated = word(directionText, directionWords, null);
    if (stated === null && directionText !== null && kind !== "zero") {
      mapped.report(row, "direction", `${quotedText(directionText)} is none of rising and falling`);
    }
    const values = {
      aimSpeed: limited("aimSpeedMetresPerSecond"),
      time: limited("timeMinutes"),
      speed: limited("speedMetresPerSecond"),
      dynamicPressure: limited("dynamicPressurePascals"),
      temperature: limited("temperatureCelsius"),
      staticPressure: limited("staticPressurePascals"),
      humidity: limited("relativeHumidityPercent"),
    };
    const force = limited("forceNewtons");
    const own = limited("incidenceDegrees");
    if (isPassed) continue;
    if (own !== null && kind === "model" && Math.abs(own - incidence) > sameIncidence) {
      const here = `the runs at ${Number(incidence.toPrecision(4))} degrees are reduced; a test is of one incidence`;
      passed.add(rowNumber(table, row), `another incidence: ${here}, so put the others into a case of their own`);
      continue;
    }
    const isAtRest = kind === "zero";
    const lacks = [
      ...(force === null ? ["force"] : []),
      ...(!isAtRest && !(values.speed ?? 0) && !(values.dynamicPressure ?? 0) ? ["speed or dynamic pressure"] : []),
    ];
    if (force === null || lacks.length > 0) {
      const isReported = mapped.problems.some((found) => found.row === rowNumber(table, row));
      if (!isReported) missing.push(`row ${rowNumber(table, row)} has no ${lacks.join(" and no ")}`);
      continue;
    }
    const speed = values.aimSpeed ?? values.speed ?? Math.sqrt(values.dynamicPressure ?? 0);
    const direction: SpeedDirection = isAtRest ? "rising" : (stated ?? followed(before, speed));
    if (kind === "model") before = { speed, direction };
    readings.push({ row: rowNumber(table, row), kind, direction, ...values, force });
  }
  notes.push(...passed.notes);
  if (readings.length === 0 && passed.count > 0) mapped.report(null, null, passed.notes.join(" "));
  if (missing.length > 0) {
    const shown = missing.slice(0, 12).join("; ");
    const more = missing.length > 12 ? ` and ${missing.length - 12} more rows` : "";
    notes.push(`Left out for missing values: ${shown}${more}.`);
  }
  if (leftOut.length > 0) notes.push(`Left out on purpose: ${leftOut.map((row) => `row ${row}`).join(", ")}.`);
  return { readings, problems: gatheredProblems(mapped.problems, table), notes, decimalMark: mapped.decimalMark };
}

/** The incidence that a table's test is of, degrees: 0 where rows have it or none says another, else the first one that is given. */
function testedIncidence(mapped: MappedTable<RunColumnKey>, { rows }: DataTable, leftOut: readonly number[]): number {
  if (!mapped.has("incidenceDegrees")) return 0;
  const given = rows.flatMap((_, row) => (leftOut.includes(row) ? [] : (mapped.number(row, "incidenceDegrees") ?? [])));
  return given.length === 0 || given.some((value) => Math.abs(value) <= sameIncidence) ? 0 : given[0];
}

function missingColumn(keys: string, { columns }: DataTable): string {
  return `no column holds ${keys}; the columns are ${shownNames(columns)}: say which one it is`;
}

function word<Word extends string, Otherwise>(
  text: string | null,
  words: Readonly<Record<string, Word>>,
  otherwise: Otherwise,
): Word | Otherwise | null {
  if (text === null) return otherwise;
  const plain = text.toLowerCase();
  return Object.hasOwn(words, plain) ? words[plain] : null;
}

/** A step of speed smaller than this share is no step. */
const sameSpeed = 0.01;

function followed(
  before: { readonly speed: number; readonly direction: SpeedDirection } | null,
  speed: number,
): SpeedDirection {
  if (before === null) return "rising";
  if (Math.abs(speed - before.speed) <= sameSpeed * before.speed) return before.direction;
  return speed > before.speed ? "rising" : "falling";
}
