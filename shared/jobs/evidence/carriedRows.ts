import { gradeNodes } from "../../engine/geometry/gradedNodes";
import type { Branch, ResultRow } from "../../engine/section/resultRow";
import { describeSection, type SectionDescription } from "../../engine/trust/sectionDescription";
import { degreesOf, fractionOf } from "../../numerics/degreesAndPercent";
import type { SolvedShape } from "../jobBlock";
import { carryCorrection, type MeasuredCorrection } from "./carriedCorrection";
import type { CarriedRow } from "./comparisonResult";

/** Panels for the description alone: enough to tell a named shape. */
const describingPanels = 120;

/**
 * The results of a case with a measured offset carried to those of the same family. Every row has a label: of the
 * correction, or of the reason why there is none.
 * @param correction null where the set gives none, with the reason
 */
export function carriedRows(
  rows: readonly ResultRow[],
  shapes: readonly SolvedShape[],
  correction: MeasuredCorrection | null,
  reason: string,
): CarriedRow[] {
  const descriptions = new Map<string, SectionDescription>();
  for (const shape of shapes) {
    const description = describe(shape);
    if (description !== null)
      descriptions.set(keyOf(shape.name, degreesOf(shape.incidence), shape.floorGap), description);
  }
  return rows.flatMap((row) => {
    const { dragCoefficient, dragCoefficientLow, dragCoefficientHigh, regime } = row;
    if (dragCoefficient === null || regime === null) return [];
    const about = {
      section: row.section,
      incidenceDegrees: row.incidenceDegrees,
      reynolds: row.reynolds,
      branch: row.branch satisfies Branch,
      sandGrainRoughnessRatio: row.sandGrainRoughnessRatio,
      turbulencePercent: row.turbulencePercent,
      dragCoefficient,
    };
    const none = (label: string): CarriedRow => ({
      ...about,
      correctedDragCoefficient: null,
      correctedLow: null,
      correctedHigh: null,
      label,
    });
    const description = descriptions.get(keyOf(row.section, row.incidenceDegrees, row.floorGapMetres));
    if (correction === null) return [none(reason)];
    if (description === undefined) return [none("not corrected: the section could not be described")];
    const settings = {
      turbulenceIntensity: fractionOf(row.turbulencePercent),
      sandGrainRoughnessRatio: row.sandGrainRoughnessRatio,
    };
    const predicted = {
      dragCoefficient,
      low: dragCoefficientLow ?? dragCoefficient,
      high: dragCoefficientHigh ?? dragCoefficient,
      regime,
    };
    const corrected = carryCorrection(correction, { description, settings }, row.reynolds, predicted);
    if (!corrected.ok) return [none(corrected.problem.message)];
    return [
      {
        ...about,
        correctedDragCoefficient: corrected.value.dragCoefficient,
        correctedLow: corrected.value.low,
        correctedHigh: corrected.value.high,
        label: corrected.value.label,
      },
    ];
  });
}

function keyOf(name: string, incidenceDegrees: number, floorGapMetres: number | null): string {
  return JSON.stringify([name, incidenceDegrees, floorGapMetres]);
}

function describe({ section, incidence, floorGap }: SolvedShape): SectionDescription | null {
  const nodes = gradeNodes(section, describingPanels);
  if (!nodes.ok) return null;
  return describeSection(nodes.value, incidence, floorGap !== null);
}
