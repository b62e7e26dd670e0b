import type { FlowCondition } from "../../engine/condition";
import { TRUST_NUMBERS } from "../../engine/constants/trustNumbers";
import { gradeNodes } from "../../engine/geometry/gradedNodes";
import { referenceWidth } from "../../engine/geometry/referenceWidth";
import type { ResultRow } from "../../engine/section/resultRow";
import { CHECKED_KNOWLEDGE, UNCHECKED_KNOWLEDGE } from "../../engine/trust/checkedLevel";
import { dragDistribution, judgeDrag } from "../../engine/trust/dragDistribution";
import type { DragKnots } from "../../engine/trust/dragKnots";
import { type SectionPoint, sectionPoint } from "../../engine/trust/errorPoint";
import { learnErrors, type MeasuredCurve } from "../../engine/trust/learnErrors";
import { describeSection } from "../../engine/trust/sectionDescription";
import { degreesOf, fractionOf } from "../../numerics/degreesAndPercent";
import type { SolvedShape } from "../jobBlock";
import type { CarriedRow } from "./comparisonResult";

/** Panels for the description alone: enough to tell a named shape. */
const describingPanels = 120;
const SCATTER = TRUST_NUMBERS.measurementScatter.value;
/** A width that keeps this part of itself, or more, has hardly been narrowed (own choice). */
const hardlyNarrowed = 0.95;

/**
 * The results of a case by the joint model once it has seen a measured set: near designs move and narrow, far ones
 * hardly. Every row has a label that says by how many points, or why it has none.
 * @param curve null where the set teaches nothing, with the reason
 */
export function learnedRows(
  rows: readonly ResultRow[],
  shapes: readonly SolvedShape[],
  curve: MeasuredCurve | null,
  reason: string,
): CarriedRow[] {
  const checked = curve === null ? CHECKED_KNOWLEDGE : learnErrors(CHECKED_KNOWLEDGE, [curve]);
  const unchecked = curve === null ? UNCHECKED_KNOWLEDGE : learnErrors(UNCHECKED_KNOWLEDGE, [curve]);
  const points = new Map<string, SectionPoint>();
  for (const shape of shapes) {
    const point = pointOf(shape);
    if (point !== null) points.set(keyOf(shape.name, degreesOf(shape.incidence), shape.floorGap), point);
  }
  return rows.flatMap((row): CarriedRow[] => {
    const { dragCoefficient, regime } = row;
    if (dragCoefficient === null || regime === null) return [];
    const about = {
      section: row.section,
      incidenceDegrees: row.incidenceDegrees,
      reynolds: row.reynolds,
      branch: row.branch,
      sandGrainRoughnessRatio: row.sandGrainRoughnessRatio,
      turbulencePercent: row.turbulencePercent,
      dragCoefficient,
    };
    const none = { correctedDragCoefficient: null, correctedLow: null, correctedHigh: null };
    const section = points.get(keyOf(row.section, row.incidenceDegrees, row.floorGapMetres));
    if (curve === null) return [{ ...about, ...none, label: reason }];
    if (section === undefined) return [{ ...about, ...none, label: "not learned: the section could not be described" }];
    const knowledge = row.applicability === "outside: do not rely on it" ? unchecked : checked;
    const condition: FlowCondition = {
      reynolds: row.reynolds,
      sandGrainRoughnessRatio: row.sandGrainRoughnessRatio,
      turbulenceIntensity: fractionOf(row.turbulencePercent),
    };
    const judged = judgeDrag(dragDistribution(knowledge, section, condition, knotsOf(rows, row)), knowledge, SCATTER);
    const before = (row.dragCoefficientHigh ?? 0) - (row.dragCoefficientLow ?? 0);
    return [
      {
        ...about,
        correctedDragCoefficient: judged.expected,
        correctedLow: judged.low,
        correctedHigh: judged.high,
        label: learnedLabel(curve, judged.high - judged.low > hardlyNarrowed * before),
      },
    ];
  });
}

/** By how many points a value has been moved. */
export function learnedLabel({ source, points }: MeasuredCurve, isFar: boolean): string {
  const count = points.length === 1 ? "1 point" : `${points.length} points`;
  return `with ${count} of "${source}" and its own bias${isFar ? ": too unlike to narrow it" : ""}`;
}

/** The engine's drag along the rows that are alike but for their Reynolds numbers. */
function knotsOf(rows: readonly ResultRow[], own: ResultRow): DragKnots {
  const alike = rows
    .filter(
      (row) =>
        row.section === own.section &&
        row.incidenceDegrees === own.incidenceDegrees &&
        row.floorGapMetres === own.floorGapMetres &&
        row.branch === own.branch &&
        row.turbulencePercent === own.turbulencePercent &&
        row.dragCoefficient !== null &&
        row.regime !== null,
    )
    .sort((a, b) => a.reynolds - b.reynolds);
  return {
    logReynolds: Float64Array.from(alike, ({ reynolds }) => Math.log(reynolds)),
    logDrag: Float64Array.from(alike, ({ dragCoefficient }) => Math.log(dragCoefficient!)),
    regimes: alike.map(({ regime }) => regime!),
  };
}

function keyOf(name: string, incidenceDegrees: number, floorGapMetres: number | null): string {
  return JSON.stringify([name, incidenceDegrees, floorGapMetres]);
}

function pointOf({ section, incidence, floorGap }: SolvedShape): SectionPoint | null {
  const nodes = gradeNodes(section, describingPanels);
  if (!nodes.ok) return null;
  const description = describeSection(nodes.value, incidence, floorGap !== null);
  return sectionPoint(description, nodes.value, referenceWidth(nodes.value, incidence));
}
