import { figureCatalogue } from "../../../shared/jobs/puck/body/figureCatalogue";
import { type DimensionKey, dimensionTable } from "../../../shared/jobs/puck/body/puckDimension";
import type { PuckGoalKey } from "../../../shared/jobs/tradeoff/puckEvaluation";
import type { FrontColumn } from "../plots/puckFrontFigure";
import { withRaisedExponents } from "./figureRows";

/** A goal as people read it, with the factor from SI. */
export interface GoalText extends FrontColumn {
  readonly factor: number;
}

/** The goals of a search, the usual ones first. */
export const goalKeys: readonly PuckGoalKey[] = [
  "dragIndex",
  "momentOfInertiaAxisKilogramSquareMetres",
  "massErrorKilograms",
  "floorContactAreaSquareMetres",
  "momentOfInertiaDiameterKilogramSquareMetres",
  "frontalAreaEdgeOnSquareMetres",
  "frontalAreaFaceOnSquareMetres",
  "coverMetres",
  "coreMassKilograms",
  "massKilograms",
  "surfaceAreaSquareMetres",
  "weightInFluidNewtons",
];

export function goalText(key: PuckGoalKey): GoalText {
  if (key === "dragIndex") return { label: "drag index, expected", unit: "baseline = 1", factor: 1 };
  if (key === "massErrorKilograms") return { label: "distance from the wanted mass", unit: "g", factor: 1000 };
  const { label, shownUnit, shownFactor } = figureCatalogue[key];
  return { label, unit: withRaisedExponents(shownUnit), factor: shownFactor };
}

export function dimensionText(key: DimensionKey): GoalText {
  return { label: dimensionTable[key].label, unit: "mm", factor: 1000 };
}
