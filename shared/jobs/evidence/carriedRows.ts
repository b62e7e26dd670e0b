import type { Contour } from "../../engine/geometry/contour";
import { gradeNodes } from "../../engine/geometry/gradedNodes";
import type { Branch, ResultRow } from "../../engine/section/resultRow";
import { describeSection, type SectionDescription } from "../../engine/trust/sectionDescription";
import { carryCorrection, type MeasuredCorrection } from "./carriedCorrection";
import type { CarriedRow } from "./comparisonResult";

/** A section of the case that an offset may be carried to. */
export interface CarriedShape {
  readonly name: string;
  readonly contour: Contour;
  readonly incidenceDegrees: number;
  readonly floorGapMetres: number | null;
}

/** Panels for the description alone: enough to tell a named shape. */
const describingPanels = 120;

/**
 * The results of a case with a measured offset carried to those of the same family. Every row has a label: of the
 * correction, or of the reason why there is none.
 * @param correction null where the set gives none, with the reason
 */
export function carriedRows(
  rows: readonly ResultRow[],
  shapes: readonly CarriedShape[],
  correction: MeasuredCorrection | null,
  reason: string,
): CarriedRow[] {
  const descriptions = new Map<string, SectionDescription>();
  for (const shape of shapes) {
    const description = describe(shape);
    if (description !== null) descriptions.set(keyOf(shape), description);
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
    const description = descriptions.get(keyOf({ ...row, name: row.section }));
    if (correction === null) return [none(reason)];
    if (description === undefined) return [none("not corrected: the section could not be described")];
    const settings = {
      turbulenceIntensity: row.turbulencePercent / 100,
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

function keyOf({ name, incidenceDegrees, floorGapMetres }: Omit<CarriedShape, "contour">): string {
  return JSON.stringify([name, incidenceDegrees, floorGapMetres]);
}

function describe({ contour, incidenceDegrees, floorGapMetres }: CarriedShape): SectionDescription | null {
  const nodes = gradeNodes(contour, describingPanels);
  if (!nodes.ok) return null;
  return describeSection(nodes.value, (incidenceDegrees * Math.PI) / 180, floorGapMetres !== null);
}
