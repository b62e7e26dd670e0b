import Papa from "papaparse";
import type { DragBand } from "../../engine/trust/dragInterval";
import { figureKeys } from "./body/figureCatalogue";
import type { PuckDragRow, PuckResult } from "./puckResult";

/** What makes a spreadsheet take text for a formula. */
const formulaStart = /^[=+\-@\t\r]/;

/**
 * The pucks as comma-separated values (RFC 4180): one line per puck, turbulence, speed and attitude, its mass figures,
 * rule verdict and index against the first baseline repeated on each; a puck without drag has one line. Lines end in
 * CR LF, text that a spreadsheet would run as a formula begins with an apostrophe.
 */
export function puckCsv(pucks: readonly PuckResult[]): string {
  const rows = pucks.flatMap((puck) =>
    puck.drag.length === 0 ? [csvRow(puck, null)] : puck.drag.map((row) => csvRow(puck, row)),
  );
  const table = Papa.unparse(rows, { columns: puckCsvColumns, newline: "\r\n", escapeFormulae: formulaStart });
  return `${table}\r\n`;
}

export const puckCsvColumns: string[] = [
  "puck",
  "role",
  "turbulencePercent",
  "speedMetresPerSecond",
  "orientation",
  "tiltDegrees",
  "floorGapMetres",
  "reynoldsOnDiameter",
  ...bandColumns("dragCoefficient"),
  "referenceArea",
  "referenceAreaSquareMetres",
  ...bandColumns("dragAreaSquareMetres"),
  ...bandColumns("dragNewtons"),
  "applicability",
  "likeliestRimState",
  "likeliestEdgeState",
  "likeliestStateShare",
  "rimSeparationDegrees",
  "crisisSpeedMetresPerSecond",
  ...bandColumns("twoSectionDragCoefficient"),
  "baseline",
  ...bandColumns("index"),
  "verdict",
  "overallVerdict",
  "rulesVerdict",
  "madeInsideShare",
  "sandGrainRoughnessMetres",
  ...figureKeys,
  "problem",
];

function bandColumns(name: string): string[] {
  return [name, `${name}Low`, `${name}High`];
}

type Cell = string | number | null;

function csvRow(puck: PuckResult, row: PuckDragRow | null): Record<string, Cell> {
  const [comparison] = puck.comparisons;
  const index = comparison?.conditions.find(
    (one) => one.turbulencePercent === row?.turbulencePercent && one.speedMetresPerSecond === row?.speedMetresPerSecond,
  );
  return {
    puck: puck.name,
    role: puck.role,
    turbulencePercent: row?.turbulencePercent ?? null,
    speedMetresPerSecond: row?.speedMetresPerSecond ?? null,
    orientation: row?.orientation ?? null,
    tiltDegrees: row?.tiltDegrees ?? null,
    floorGapMetres: row?.floorGapMetres ?? null,
    reynoldsOnDiameter: row?.reynoldsOnDiameter ?? null,
    ...bandCells("dragCoefficient", row?.dragCoefficient),
    referenceArea: row?.referenceArea ?? null,
    referenceAreaSquareMetres: row?.referenceAreaSquareMetres ?? null,
    ...bandCells("dragAreaSquareMetres", row?.dragAreaSquareMetres),
    ...bandCells("dragNewtons", row?.dragNewtons),
    applicability: row?.applicability ?? null,
    likeliestRimState: row?.states[0]?.rimState ?? null,
    likeliestEdgeState: row?.states[0]?.edgeState ?? null,
    likeliestStateShare: row?.states[0]?.share ?? null,
    rimSeparationDegrees: row?.states[0]?.rimSeparationDegrees ?? null,
    crisisSpeedMetresPerSecond: row?.crisisSpeedMetresPerSecond ?? null,
    ...bandCells("twoSectionDragCoefficient", row?.twoSectionDragCoefficient ?? undefined),
    baseline: comparison?.baseline ?? null,
    ...bandCells("index", index?.index),
    verdict: index?.verdict ?? null,
    overallVerdict: comparison?.overall.verdict ?? null,
    rulesVerdict: puck.rules?.verdict ?? null,
    madeInsideShare: puck.rules?.made?.share ?? null,
    sandGrainRoughnessMetres: puck.sandGrainRoughnessMetres,
    ...Object.fromEntries(figureKeys.map((key) => [key, puck.figures[key]])),
    problem: puck.problem,
  };
}

function bandCells(name: string, band: DragBand | undefined): Record<string, Cell> {
  return { [name]: band?.expected ?? null, [`${name}Low`]: band?.low ?? null, [`${name}High`]: band?.high ?? null };
}
