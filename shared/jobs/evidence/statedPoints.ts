import { type Problem, problem, type Result, success } from "../../result";
import { tableProblemText } from "../../tables/dataTable";
import { measuredBounds } from "./measuredColumns";
import type { MeasuredPoint } from "./measurement";
import type { MeasurementSetDocument } from "./measurementBlockDocument";
import { coverage } from "./normalisedError";
import { type MeasuredReading, type MeasuredTableChoices, readMeasuredTable } from "./readMeasuredTable";

/** The points of a set as a case file states them, put on the width, or what is wrong with them. */
export type PointsReading =
  | { readonly ok: true; readonly points: readonly MeasuredPoint[]; readonly skipped: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads the points or the table of a set; none where they come from elsewhere.
 * @param field place of the set in the case file, for messages
 */
export function readStatedPoints(
  { points, table, incidenceDegrees }: MeasurementSetDocument,
  field: string,
  choices: Pick<MeasuredTableChoices, "reynoldsPerSpeed" | "scale">,
): PointsReading {
  if (table !== undefined) {
    if (typeof table.data === "string") {
      const message = `is the path "${table.data}", which was not read here; put the table's rows in its place`;
      return { ok: false, problems: [at(`${field}.table.data`, message)] };
    }
    const reading: MeasuredReading = readMeasuredTable(table.data, {
      ...choices,
      mapping: table.columns ?? {},
      decimalMark: table.decimalMark ?? null,
      ...(incidenceDegrees === undefined ? {} : { incidenceDegrees }),
    });
    return reading.ok
      ? reading
      : { ok: false, problems: reading.problems.map((one) => at(`${field}.table`, tableProblemText(one))) };
  }
  const problems: Problem[] = [];
  const found = (points ?? []).flatMap((point, i): MeasuredPoint[] => {
    const place = `${field}.points[${i}]`;
    const reynolds = reynoldsOf(point, choices);
    if (!reynolds.ok) {
      problems.push(at(place, reynolds.problem.message));
      return [];
    }
    const uncertainty =
      point.standardUncertainty ??
      (point.expandedUncertainty === undefined ? null : point.expandedUncertainty / coverage);
    return [
      {
        reynolds: reynolds.value,
        dragCoefficient: point.dragCoefficient * choices.scale.drag,
        standardUncertainty: uncertainty === null ? null : uncertainty * choices.scale.drag,
        direction: point.direction ?? null,
        strouhal: point.strouhalNumber ?? null,
        basePressureCoefficient: point.basePressureCoefficient ?? null,
        separationAngleDegrees: point.separationAngleDegrees ?? null,
      },
    ];
  });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, points: found, skipped: [] };
}

function reynoldsOf(
  { reynoldsNumber, speedMetresPerSecond: speed }: NonNullable<MeasurementSetDocument["points"]>[number],
  { reynoldsPerSpeed, scale }: Pick<MeasuredTableChoices, "reynoldsPerSpeed" | "scale">,
): Result<number> {
  if ((reynoldsNumber === undefined) === (speed === undefined)) {
    return problem("point", "exactly one of reynoldsNumber and speedMetresPerSecond must be given");
  }
  if (reynoldsNumber === undefined && reynoldsPerSpeed === null) {
    return problem("point", "speedMetresPerSecond needs a fluid, of the set or of the case");
  }
  const reynolds = reynoldsNumber === undefined ? speed! * reynoldsPerSpeed! : reynoldsNumber * scale.reynolds;
  const { from, to } = measuredBounds.reynoldsNumber;
  if (reynolds >= from && reynolds <= to) return success(reynolds);
  return problem(
    "point",
    `on the width it is Reynolds number ${reynolds.toPrecision(3)}; it must be from ${from} to ${to}`,
  );
}

function at(field: string, message: string): Problem {
  return { code: "measurements", message: `${field}: ${message}`, field };
}
