import { sweepNumber, sweepText, sweepUnit, sweepWords } from "../document/sweepText";
import { type ResultRow, referenceAreaText } from "../engine/section/resultRow";
import type { CaseResults } from "./caseResults";

interface Column {
  readonly title: string | ((row: ResultRow) => string);
  readonly unit: string | ((row: ResultRow) => string);
  readonly isText?: boolean;
  readonly cell: (row: ResultRow) => string;
}

const columns: readonly Column[] = [
  {
    title: (row) => sweepWords(row.sweepKey ?? ""),
    unit: (row) => sweepUnit(row.sweepKey ?? ""),
    cell: (row) =>
      row.sweepKey === null || row.sweepValue === null
        ? "-"
        : significant(sweepNumber(row.sweepKey, row.sweepValue), 4),
  },
  { title: "Re", unit: "", cell: (row) => significant(row.reynolds, 4) },
  { title: "U", unit: "m/s", cell: (row) => significant(row.speedMetresPerSecond, 4) },
  { title: "branch", unit: "", isText: true, cell: (row) => row.branch },
  { title: "regime", unit: "", isText: true, cell: (row) => row.regime ?? "-" },
  { title: "sep. up", unit: "deg", cell: (row) => fixed(row.separationAngleUpperDegrees, 1) },
  { title: "sep. low", unit: "deg", cell: (row) => fixed(row.separationAngleLowerDegrees, 1) },
  { title: "Cp base", unit: "", cell: (row) => fixed(row.basePressureCoefficient, 3) },
  { title: "Cp min", unit: "", cell: (row) => fixed(row.minimumPressureCoefficient, 3) },
  { title: "S", unit: "", cell: (row) => fixed(row.strouhal, 3) },
  { title: "f", unit: "Hz", cell: (row) => significant(row.sheddingFrequencyHertz, 3) },
  { title: "Cd pres", unit: "", cell: (row) => fixed(row.pressureDragCoefficient, 3) },
  { title: "Cd fric", unit: "", cell: (row) => fixed(row.frictionDragCoefficient, 4) },
  { title: "Cd", unit: "", cell: (row) => fixed(row.dragCoefficient, 3) },
  { title: "Cd exp.", unit: "", cell: (row) => fixed(row.dragCoefficientExpected, 2) },
  { title: "Cd band", unit: "", cell: band },
  { title: "past", unit: "", cell: (row) => fixed(row.pastCrisisShare, 2) },
  { title: "Cl", unit: "", cell: (row) => fixed(row.liftCoefficient, 3) },
  { title: "drag", unit: "N/m", cell: (row) => significant(row.dragPerSpanNewtonsPerMetre, 3) },
  { title: "", unit: "", isText: true, cell: remark },
];

/**
 * The results as text for people: what the case is, what the coefficients refer to and the cautions, then one aligned
 * table for every section (or sweep of one), incidence, roughness and turbulence. Lines end in a line feed.
 */
export function resultTable(results: CaseResults): string {
  const failures = results.results.filter((row) => !row.converged).length;
  return [
    ...headerLines(results),
    ...groups(results.results).flatMap((rows) => ["", groupTitle(rows[0]), ...tableLines(rows)]),
    "",
    ...(results.results.length === 0
      ? [results.generatedBy]
      : [
          `${results.results.length} results, ${failures === 0 ? "all converged" : `${failures} did not converge (marked)`}. ${results.generatedBy}`,
        ]),
    "",
  ].join("\n");
}

function headerLines(results: CaseResults): string[] {
  const { fluid } = results;
  return [
    results.title,
    ...(results.note === null ? [] : [results.note]),
    ...(fluid === null
      ? []
      : [
          `Fluid: ${fluid.name}, density ${significant(fluid.density, 5)} kg/m³, kinematic viscosity ${significant(fluid.kinematicViscosity, 4)} m²/s (${fluid.source})`,
        ]),
    ...(results.results.length === 0
      ? []
      : [
          `Coefficients refer to ${referenceAreaText}; Re, ks/D and S to the reference width D, the section's extent across the stream; drag is per metre of span. "Cd exp." is the mean drag and "Cd band" its 5 and 95 %, by the engine's errors against published values; "past" is the probability to be past the drag crisis.`,
        ]),
    ...results.cautions.map((caution) => `Caution: ${caution}`),
  ];
}

/** Neighbouring rows of one section or one sweep of it, incidence, width, roughness and turbulence. */
function groups(rows: readonly ResultRow[]): ResultRow[][] {
  const found: ResultRow[][] = [];
  for (const row of rows) {
    const last = found.at(-1);
    if (last !== undefined && groupTitle(last[0]) === groupTitle(row)) last.push(row);
    else found.push([row]);
  }
  return found;
}

function groupTitle(row: ResultRow): string {
  const swept = row.sweepKey === null || row.sweepValue === null ? "" : `, ${sweepText(row.sweepKey, row.sweepValue)}`;
  return [
    swept !== "" && row.section.endsWith(swept) ? row.section.slice(0, -swept.length) : row.section,
    `D ${significant(row.referenceWidth * 1000, 4)} mm`,
    `incidence ${significant(row.incidenceDegrees, 4)}°`,
    ...(row.floorGapMetres === null || row.sweepKey === "floorGapMetres"
      ? []
      : [`floor gap ${significant(row.floorGapMetres * 1000, 4)} mm`]),
    `ks/D ${significant(row.sandGrainRoughnessRatio, 3)}`,
    `Tu ${significant(row.turbulencePercent, 3)} %`,
    ...(row.layerMethod === "textbook" ? ["textbook layers"] : []),
  ].join(" | ");
}

function tableLines(rows: readonly ResultRow[]): string[] {
  const shown = columns
    .map((column) => ({
      column,
      cells: [head(column.title, rows[0]), head(column.unit, rows[0]), ...rows.map(column.cell)],
    }))
    .filter(({ cells }) => cells.slice(2).some((cell) => cell !== "-" && cell !== ""));
  const widths = shown.map(({ cells }) => Math.max(...cells.map((cell) => cell.length)));
  return Array.from({ length: rows.length + 2 }, (_, line) =>
    shown
      .map(({ column, cells }, i) =>
        column.isText === true ? cells[line].padEnd(widths[i]) : cells[line].padStart(widths[i]),
      )
      .join("  ")
      .trimEnd(),
  ).concat(reasonLines(rows));
}

/** Why rows are not inside the checked range, each reason once. */
function reasonLines(rows: readonly ResultRow[]): string[] {
  const reasons = new Set(
    rows.flatMap(({ applicability, applicabilityReason }) =>
      applicabilityReason === null ? [] : [`${applicability}. ${applicabilityReason}`],
    ),
  );
  return [...reasons].map((reason) => reason[0].toUpperCase() + reason.slice(1));
}

function head(text: Column["title"], row: ResultRow): string {
  return typeof text === "string" ? text : text(row);
}

function band(row: ResultRow): string {
  if (row.dragCoefficientLow === null || row.dragCoefficientHigh === null) return "-";
  return `${row.dragCoefficientLow.toFixed(2)}-${row.dragCoefficientHigh.toFixed(2)}`;
}

function remark(row: ResultRow): string {
  const parts = [
    row.converged ? "" : "NOT CONVERGED",
    row.oneSided === true ? "one-sided" : "",
    row.onSwitch === true ? "on a switch" : "",
    row.attached === true ? "attached flow" : "",
    row.settled === false ? "not settled" : "",
    row.problem ?? "",
  ];
  if (row.applicability !== null) parts.push(row.applicability);
  return parts.filter((part) => part !== "").join(": ");
}

function fixed(value: number | null, digits: number): string {
  if (value === null) return "-";
  const text = value.toFixed(digits);
  return Number(text) === 0 ? text.replace("-", "") : text;
}

/** Digits as in a hand-written table: plain between 0.001 and 99 999, else with an exponent. */
function significant(value: number | null, digits: number): string {
  if (value === null) return "-";
  if (value === 0) return "0";
  const size = Math.abs(value);
  if (size >= 1e-3 && size < 1e5) return String(Number(value.toPrecision(digits)));
  return value.toExponential(digits - 1).replace("e+", "e");
}
