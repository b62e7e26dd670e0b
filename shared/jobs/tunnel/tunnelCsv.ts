import Papa from "papaparse";
import type { TunnelPoint, TunnelResult } from "./tunnelResult";

/** Columns of the reduced points, in order. */
export const tunnelCsvColumns = [
  "model",
  "direction",
  "nominalSpeedMetresPerSecond",
  "repeats",
  "speedMetresPerSecond",
  "dynamicPressurePascals",
  "netForceNewtons",
  "reynolds",
  "reynoldsExpandedUncertainty",
  "dragCoefficient",
  "standardUncertainty",
  "effectiveDegreesOfFreedom",
  "expandedUncertainty",
  "coveragePercent",
  "monteCarloLow",
  "monteCarloHigh",
  "correction",
  "dragCoefficientUncorrected",
  "dragCoefficientMaskell",
  "dragCoefficientAllenVincenti",
  "predictedLow",
  "predictedBest",
  "predictedHigh",
  "referenceArea",
  "referenceAreaSquareMetres",
  "referenceLength",
  "referenceLengthMetres",
] as const;

/** What makes a spreadsheet take text for a formula. */
const formulaStart = /^[=+\-@\t\r]/;

/** The reduced points as comma-separated values (RFC 4180), one line each, an empty field where there is no value. */
export function tunnelCsv(result: TunnelResult): string {
  const rows = (result.reduction?.points ?? []).map((point) => pointCells(point, result));
  const table = Papa.unparse(rows, { columns: [...tunnelCsvColumns], newline: "\r\n", escapeFormulae: formulaStart });
  return rows.length === 0 ? `${tunnelCsvColumns.join(",")}\r\n` : `${table}\r\n`;
}

function pointCells(
  point: TunnelPoint,
  result: TunnelResult,
): Record<(typeof tunnelCsvColumns)[number], string | number | null> {
  const by = (method: string) => point.corrections.find((each) => each.method === method)?.dragCoefficient ?? null;
  return {
    model: result.model,
    direction: point.direction,
    nominalSpeedMetresPerSecond: point.nominalSpeedMetresPerSecond,
    repeats: point.repeats,
    speedMetresPerSecond: point.speedMetresPerSecond,
    dynamicPressurePascals: point.dynamicPressurePascals,
    netForceNewtons: point.netForceNewtons,
    reynolds: point.reynolds,
    reynoldsExpandedUncertainty: point.reynoldsExpandedUncertainty,
    dragCoefficient: point.dragCoefficient,
    standardUncertainty: point.firstOrder.combinedStandardUncertainty,
    effectiveDegreesOfFreedom: point.firstOrder.effectiveDegreesOfFreedom,
    expandedUncertainty: point.firstOrder.expandedUncertainty,
    coveragePercent: 100 * point.firstOrder.coverage,
    monteCarloLow: point.monteCarlo?.low ?? null,
    monteCarloHigh: point.monteCarlo?.high ?? null,
    correction: result.reduction?.correction ?? null,
    dragCoefficientUncorrected: by("none"),
    dragCoefficientMaskell: by("maskell"),
    dragCoefficientAllenVincenti: by("allenVincenti"),
    predictedLow: point.predictedDragCoefficient?.low ?? null,
    predictedBest: point.predictedDragCoefficient?.expected ?? null,
    predictedHigh: point.predictedDragCoefficient?.high ?? null,
    referenceArea: result.referenceArea,
    referenceAreaSquareMetres: result.referenceAreaSquareMetres,
    referenceLength: result.referenceLength,
    referenceLengthMetres: result.referenceLengthMetres,
  };
}
