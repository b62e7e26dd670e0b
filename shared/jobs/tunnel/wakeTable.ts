import { shownNames } from "../../document/shownText";
import type { DecimalMark } from "../../tables/cellNumber";
import { type ColumnMapping, mapColumns } from "../../tables/columnMapping";
import type { DataTable, TableProblem } from "../../tables/dataTable";
import { gatheredProblems } from "../../tables/passedOver";
import { type WakeColumnKey, wakeColumnQuantities } from "./wakeColumns";
import type { WakeTraverse } from "./wakeSurvey";

/** Reads a wake traverse, sorted by position; a row without position or total pressure is reported. */
export function readWakeTable(
  table: DataTable,
  mapping: ColumnMapping<WakeColumnKey>,
  decimalMark: DecimalMark | null,
): {
  readonly traverse: Omit<WakeTraverse, "dynamicPressure">;
  readonly problems: readonly TableProblem[];
  readonly decimalMark: DecimalMark;
} {
  const mapped = mapColumns(table, wakeColumnQuantities, mapping, decimalMark);
  for (const key of ["positionMetres", "totalPressurePascals"] as const) {
    if (mapped.has(key)) continue;
    mapped.report(
      null,
      null,
      `no column holds ${key}; the columns are ${shownNames(table.columns)}: say which one it is`,
    );
  }
  const stations: { y: number; total: number; fixed: number }[] = [];
  if (mapped.problems.length === 0) {
    for (let row = 0; row < table.rows.length; row++) {
      const before: number = mapped.problems.length;
      const y = mapped.number(row, "positionMetres");
      const total = mapped.number(row, "totalPressurePascals");
      const fixed = mapped.number(row, "staticPressurePascals");
      if (y === null && total === null && fixed === null && mapped.problems.length === before) continue;
      if (y !== null && total !== null && (fixed !== null || !mapped.has("staticPressurePascals"))) {
        stations.push({ y, total, fixed: fixed ?? 0 });
      } else if (mapped.problems.length === before) {
        const key = y === null ? "positionMetres" : total === null ? "totalPressurePascals" : "staticPressurePascals";
        mapped.report(row, key, "it is missing; a traverse needs every reading, or take the row out");
      }
    }
  }
  stations.sort((a, b) => a.y - b.y);
  return {
    traverse: {
      position: Float64Array.from(stations, ({ y }) => y),
      totalPressure: Float64Array.from(stations, ({ total }) => total),
      staticPressure: mapped.has("staticPressurePascals") ? Float64Array.from(stations, ({ fixed }) => fixed) : null,
    },
    problems: gatheredProblems(mapped.problems, table),
    decimalMark: mapped.decimalMark,
  };
}
