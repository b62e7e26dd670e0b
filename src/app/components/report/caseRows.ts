import { regimeInWords } from "../../../../shared/engine/section/regimeInWords";
import type { ResultRow } from "../../../../shared/engine/section/resultRow";

/** Rows of an opened case that the report has room for. */
export const mostReportRows = 12;

/** A case's results for the report: column heads, the first rows, and how many more there are. */
export interface ReportRows {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly more: number;
}

export function reportRows(rows: readonly ResultRow[]): ReportRows {
  return {
    columns: ["Section", "Re", "ks/D", "Tu", "branch", "regime", "Cd on D x span (90 % band)", "Cpb", "S"],
    rows: rows.slice(0, mostReportRows).map(cells),
    more: Math.max(0, rows.length - mostReportRows),
  };
}

function cells(row: ResultRow): string[] {
  const { dragCoefficient, dragCoefficientLow, dragCoefficientHigh } = row;
  const band =
    dragCoefficientLow === null || dragCoefficientHigh === null
      ? ""
      : ` (${shown(dragCoefficientLow)} to ${shown(dragCoefficientHigh)})`;
  return [
    sectionCell(row),
    row.reynolds.toExponential(2).replace("e+", "e"),
    row.sandGrainRoughnessRatio === 0 ? "0" : row.sandGrainRoughnessRatio.toExponential(1),
    `${Number(row.turbulencePercent.toPrecision(3))} %`,
    row.branch,
    regimeInWords(row) ?? "did not converge",
    dragCoefficient === null ? "–" : `${shown(dragCoefficient)}${band}`,
    row.basePressureCoefficient === null ? "–" : row.basePressureCoefficient.toFixed(2),
    row.strouhal === null ? "–" : row.strouhal.toFixed(3),
  ];
}

function sectionCell({ section, sweepKey, sweepValue, layerMethod }: ResultRow): string {
  const swept = sweepValue === null ? "" : `, ${sweepKey} ${Number(sweepValue.toPrecision(4))}`;
  return `${section}${swept}${layerMethod === "textbook" ? ", textbook layers" : ""}`;
}

function shown(coefficient: number): string {
  return coefficient.toFixed(3);
}
