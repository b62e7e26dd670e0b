import { shownNames } from "../../document/shownText";
import { radiansOf } from "../../numerics/degreesAndPercent";
import { mean } from "../../statistics/sample";
import type { DecimalMark } from "../../tables/cellNumber";
import { type ColumnMapping, mapColumns } from "../../tables/columnMapping";
import { type DataTable, rowNumber, type TableProblem } from "../../tables/dataTable";
import { gatheredProblems, PassedOver } from "../../tables/passedOver";
import type { TapReading } from "./pressureTaps";
import { type TapColumnKey, tapColumnQuantities } from "./tapColumns";

/**
 * Reads a tap table: each row has an angle, or x and y, and a coefficient or a pressure. A tap without a reading (blocked)
 * is left out.
 * @param dynamicPressure Pa, for pressures; null where coefficients stand in the table
 */
export function readTapTable(
  table: DataTable,
  mapping: ColumnMapping<TapColumnKey>,
  decimalMark: DecimalMark | null,
  dynamicPressure: number | null,
): {
  readonly taps: readonly TapReading[];
  readonly problems: readonly TableProblem[];
  /** Rows that were passed over, and samples that were averaged, in sentences. */
  readonly notes: readonly string[];
  readonly decimalMark: DecimalMark;
} {
  const mapped = mapColumns(table, tapColumnQuantities, mapping, decimalMark);
  const hasPoint = mapped.has("xMetres") && mapped.has("yMetres");
  const columns = `the columns are ${shownNames(table.columns)}: say which one it is`;
  if (!mapped.has("angleDegrees") && !hasPoint) {
    mapped.report(null, null, `no column holds angleDegrees, or xMetres and yMetres; ${columns}`);
  }
  if (!mapped.has("pressureCoefficient") && !mapped.has("pressurePascals")) {
    mapped.report(null, null, `no column holds pressureCoefficient or pressurePascals; ${columns}`);
  }
  if (!mapped.has("pressureCoefficient") && mapped.has("pressurePascals") && dynamicPressure === null) {
    mapped.report(null, "pressurePascals", "pressures need the dynamicPressurePascals of the stream");
  }
  const taps: TapReading[] = [];
  const { problems, decimalMark: mark } = mapped;
  if (problems.length > 0) return { taps, problems, notes: [], decimalMark: mark };
  const passed = new PassedOver();
  for (let row = 0; row < table.rows.length; row++) {
    const number = rowNumber(table, row);
    const before = mapped.problems.length;
    const reference = mapped.number(row, "referencePressurePascals");
    const pressure = less(mapped.number(row, "pressurePascals"), reference, mapped.has("referencePressurePascals"));
    const coefficient =
      mapped.number(row, "pressureCoefficient") ??
      (pressure === null || dynamicPressure === null ? null : pressure / dynamicPressure);
    const angle = mapped.number(row, "angleDegrees");
    const x = mapped.number(row, "xMetres");
    const y = mapped.number(row, "yMetres");
    if (mapped.problems.length > before || coefficient === null) continue;
    const common = { name: mapped.text(row, "tap") ?? `row ${number}`, row: number, pressureCoefficient: coefficient };
    if (!(coefficient >= -20 && coefficient <= 1.5)) {
      passed.add(number, "a pressure coefficient out of range; it must be from -20 to 1.5");
    } else if (angle !== null) {
      taps.push({ ...common, place: { kind: "angle", angle: radiansOf(angle) } });
    } else if (x !== null && y !== null) {
      taps.push({ ...common, place: { kind: "point", x, y } });
    } else {
      const key = mapped.has("angleDegrees") ? "angleDegrees" : x === null ? "xMetres" : "yMetres";
      mapped.report(row, key, "it is missing; a tap needs a place");
    }
  }
  const averaged = samplesAveraged(taps);
  if (problems.length === 0 && taps.length === 0 && passed.count > 0) mapped.report(null, null, passed.notes.join(" "));
  return {
    taps: averaged,
    problems: gatheredProblems(problems, table),
    notes: [
      ...passed.notes,
      ...(averaged.length < taps.length
        ? [`${taps.length} readings at ${averaged.length} places: the readings of each place are averaged.`]
        : []),
    ],
    decimalMark: mark,
  };
}

/** A pressure less its row's reference; null where the reference column has nothing. */
function less(pressure: number | null, reference: number | null, isAsked: boolean): number | null {
  if (!isAsked || pressure === null) return pressure;
  return reference === null ? null : pressure - reference;
}

/** One tap for each place: several readings there are samples of one. */
function samplesAveraged(taps: readonly TapReading[]): TapReading[] {
  const places = new Map<string, TapReading[]>();
  for (const tap of taps) {
    const { place } = tap;
    const key =
      place.kind === "angle"
        ? `angle ${Math.cos(place.angle).toFixed(9)} ${Math.sin(place.angle).toFixed(9)}`
        : `point ${place.x} ${place.y}`;
    const there = places.get(key);
    if (there === undefined) places.set(key, [tap]);
    else there.push(tap);
  }
  return [...places.values()].map((samples) => ({
    ...samples[0],
    pressureCoefficient: mean(samples.map(({ pressureCoefficient }) => pressureCoefficient)),
  }));
}
