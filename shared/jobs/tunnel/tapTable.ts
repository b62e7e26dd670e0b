import { shownNames } from "../../document/shownText";
import { radiansOf } from "../../numerics/degreesAndPercent";
import type { DecimalMark } from "../../tables/cellNumber";
import { type ColumnMapping, mapColumns } from "../../tables/columnMapping";
import { type DataTable, rowNumber, type TableProblem } from "../../tables/dataTable";
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
  if (problems.length > 0) return { taps, problems, decimalMark: mark };
  for (let row = 0; row < table.rows.length; row++) {
    const number = rowNumber(table, row);
    const before = mapped.problems.length;
    const pressure = mapped.number(row, "pressurePascals");
    const coefficient =
      mapped.number(row, "pressureCoefficient") ??
      (pressure === null || dynamicPressure === null ? null : pressure / dynamicPressure);
    const angle = mapped.number(row, "angleDegrees");
    const x = mapped.number(row, "xMetres");
    const y = mapped.number(row, "yMetres");
    if (mapped.problems.length > before || coefficient === null) continue;
    const common = { name: mapped.text(row, "tap") ?? `row ${number}`, row: number, pressureCoefficient: coefficient };
    if (!(coefficient >= -20 && coefficient <= 1.5)) {
      mapped.report(
        row,
        mapped.has("pressureCoefficient") ? "pressureCoefficient" : "pressurePascals",
        `a pressure coefficient of ${coefficient.toPrecision(3)} is not possible; it must be from -20 to 1.5`,
      );
    } else if (angle !== null) {
      taps.push({ ...common, place: { kind: "angle", angle: radiansOf(angle) } });
    } else if (x !== null && y !== null) {
      taps.push({ ...common, place: { kind: "point", x, y } });
    } else {
      const key = mapped.has("angleDegrees") ? "angleDegrees" : x === null ? "xMetres" : "yMetres";
      mapped.report(row, key, "it is missing; a tap needs a place");
    }
  }
  return { taps, problems, decimalMark: mark };
}
