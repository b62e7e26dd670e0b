import type { CaseResults } from "../../shared/case/caseResults";
import { type Branch, branchRow, type ResultRow, type RowSection } from "../../shared/engine/section/resultRow";
import type { SolvedStream } from "../../shared/engine/section/solveStreams";
import type { ConditionOutcome, SectionState, SideSolution } from "../../shared/engine/solution";
import type { JudgedDragBand } from "../../shared/engine/trust/judgedDragBand";

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
    attached: false,
    settled: true,
    unsettledBy: null,
    dragCoefficientSeen: [1, 1],
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
    intermittency: null,
    ...changes,
  };
}

/** What a sample row can be told to differ in. */
export interface SampleRow {
  readonly name: string;
  readonly speed: number | null;
  readonly reynolds: number;
  readonly turbulenceIntensity: number;
}

const sampleSection: RowSection = {
  name: "circle 80 mm",
  incidence: 0,
  floorGap: null,
  referenceWidth: 0.08,
  panelCount: 200,
};

export function sampleSolved(outcome: ConditionOutcome, changes: Partial<SampleRow> = {}): SolvedStream {
  const { reynolds = 187000, speed = 2, turbulenceIntensity = 0.001 } = changes;
  const condition = { reynolds, turbulenceIntensity, sandGrainRoughnessRatio: 1e-4 };
  const fluid = { density: 1000, kinematicViscosity: ((speed ?? 1) * sampleSection.referenceWidth) / reynolds };
  const stream = speed === null ? condition : { ...condition, fluid };
  return { stream, condition, outcome, bands: [], nearby: outcome.states, around: [] };
}

export const nothingFound: ConditionOutcome = {
  states: [],
  rising: null,
  falling: null,
  problem: { code: "no-root", message: "no separation point was found between 60 and 150 degrees" },
};

export function rowOf(outcome: ConditionOutcome, branch: Branch, bands: readonly JudgedDragBand[] = []): ResultRow {
  return branchRow(sampleSection, { ...sampleSolved(outcome), bands }, branch);
}

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

export function sampleRow(changes: Partial<SampleRow> = {}, state: Partial<SectionState> = {}): ResultRow {
  const outcome: ConditionOutcome = { states: [sampleState(state)], rising: 0, falling: 0, problem: null };
  const { name = sampleSection.name } = changes;
  return branchRow({ ...sampleSection, name }, sampleSolved(outcome, changes), "rising");
}
