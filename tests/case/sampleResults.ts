import type { CaseResults } from "../../shared/case/caseResults";
import { branchRow, type ResultRow, type RowCondition } from "../../shared/engine/section/resultRow";
import type { ConditionOutcome, SectionState, SideSolution } from "../../shared/engine/solution";

/** A made-up state: round numbers that are easy to find again in a table. */
export function sampleState(changes: Partial<SectionState> = {}): SectionState {
  const side: SideSolution = {
    state: "laminar separation",
    separationArc: 0.7,
    separationAngle: (80 * Math.PI) / 180,
    separationContourArc: 0.05,
    transitionCause: null,
    transitionArc: null,
    bubble: null,
    layer: {
      arc: new Float64Array(0),
      edgeSpeed: new Float64Array(0),
      momentumThickness: new Float64Array(0),
      shapeFactor: new Float64Array(0),
      skinFriction: new Float64Array(0),
      layerKind: new Uint8Array(0),
    },
  };
  return {
    regime: "subcritical",
    onSwitch: false,
    oneSided: false,
    upper: side,
    lower: { ...side, separationAngle: (81 * Math.PI) / 180 },
    separationSpeedRatio: 1.48,
    basePressureCoefficient: -1.19,
    minimumPressureCoefficient: -1.31,
    strouhal: 0.2,
    pressureDragCoefficient: 1.2,
    frictionDragCoefficient: 0.0125,
    dragCoefficient: 1.2125,
    liftCoefficient: 0.01,
    wakeWidth: 1.2,
    pressureCoefficient: new Float64Array(0),
    surfaceVelocity: new Float64Array(0),
    outflow: new Float64Array(0),
    ...changes,
  };
}

export const sampleCondition: RowCondition = {
  section: "circle 80 mm",
  sweep: null,
  incidenceDegrees: 0,
  reynolds: 187000,
  speed: 2,
  density: 1000,
  sandGrainRoughnessRatio: 1e-4,
  turbulencePercent: 0.1,
  referenceWidth: 0.08,
  panelCount: 200,
};

export const nothingFound: ConditionOutcome = {
  states: [],
  rising: null,
  falling: null,
  problem: { code: "no-root", message: "no separation point was found between 60 and 150 degrees" },
};

export function sampleResults(results: readonly ResultRow[]): CaseResults {
  return {
    wakewrightResults: 1,
    title: "A sample",
    note: "made up",
    generatedBy: "Wakewright 0.1.0",
    fluid: null,
    cautions: ["Screening estimates."],
    results,
    problems: [],
  };
}

export function sampleRow(changes: Partial<RowCondition> = {}, state: Partial<SectionState> = {}): ResultRow {
  const outcome: ConditionOutcome = { states: [sampleState(state)], rising: 0, falling: 0, problem: null };
  return branchRow({ ...sampleCondition, ...changes }, outcome, "rising");
}
