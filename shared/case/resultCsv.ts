import Papa from "papaparse";
import type { ResultRow } from "../engine/section/resultRow";
import type { CaseResults } from "./caseResults";

/** Columns of the CSV output in order: the keys of a result row. */
export const csvColumns = [
  "section",
  "sweepKey",
  "sweepValue",
  "incidenceDegrees",
  "floorGapMetres",
  "reynolds",
  "speedMetresPerSecond",
  "sandGrainRoughnessRatio",
  "turbulencePercent",
  "layerMethod",
  "branch",
  "converged",
  "regime",
  "oneSided",
  "onSwitch",
  "attached",
  "settled",
  "separationStateUpper",
  "separationStateLower",
  "transitionCauseUpper",
  "transitionCauseLower",
  "separationAngleUpperDegrees",
  "separationAngleLowerDegrees",
  "separationArcUpper",
  "separationArcLower",
  "reattachmentArcUpper",
  "reattachmentArcLower",
  "reattachedTimeShare",
  "openWakeDragCoefficient",
  "reattachedDragCoefficient",
  "basePressureCoefficient",
  "minimumPressureCoefficient",
  "strouhal",
  "sheddingFrequencyHertz",
  "pressureDragCoefficient",
  "frictionDragCoefficient",
  "dragCoefficient",
  "dragCoefficientExpected",
  "dragCoefficientLow",
  "dragCoefficientHigh",
  "measurementDragCoefficientLow",
  "measurementDragCoefficientHigh",
  "pastCrisisShare",
  "crisisSpeedLowMetresPerSecond",
  "crisisSpeedMidMetresPerSecond",
  "crisisSpeedHighMetresPerSecond",
  "applicability",
  "applicabilityReason",
  "liftCoefficient",
  "dragPerSpanNewtonsPerMetre",
  "referenceWidth",
  "referenceArea",
  "panelCount",
  "stateCount",
  "problem",
] as const satisfies readonly (keyof ResultRow)[];

/** What makes a spreadsheet take text for a formula; the library's own pattern misses text of several lines. */
const formulaStart = /^[=+\-@\t\r]/;

/**
 * The results as comma-separated values (RFC 4180): one header line, one line per result, an empty field for null, lines
 * ending in CR LF. Text that a spreadsheet would run as a formula is made harmless by a leading apostrophe.
 */
export function resultCsv(results: CaseResults): string {
  const rows = results.results.map((row) => ({ ...row }));
  const table = Papa.unparse(rows, { columns: [...csvColumns], newline: "\r\n", escapeFormulae: formulaStart });
  return `${table}\r\n`;
}
