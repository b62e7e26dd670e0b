import type { FlowCondition } from "../../shared/engine/condition";
import { CALIBRATED } from "../../shared/engine/constants/calibrated";
import { gradeNodes } from "../../shared/engine/geometry/gradedNodes";
import { panelCountForSection } from "../../shared/engine/geometry/panelCountForSection";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";
import type { SectionState } from "../../shared/engine/solution";
import type { PreparedSection } from "../../shared/engine/solve/preparedSection";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import type { RandomSection } from "./randomConditions";

/** Most panels of a surveyed section: the question is whether there is an answer, not its last per cent. */
const mostPanels = 160;
/** Change of an input that no answer may notice, and the part of Cd from which it counts as noticed. */
const nudge = 1 + 1e-6;
const noticed = 0.01;
const leastDrag = 0.05;
const enlargement = 7;

/** What was found of one condition. */
export interface SurveyedCondition {
  readonly answered: boolean;
  readonly settled: boolean;
  /** Why there is no answer, or why it is not settled; null for a settled one. */
  readonly problem: string | null;
  /** Trials with one input moved, those whose answer jumped, and those among these that both answers called settled. */
  readonly trials: number;
  readonly jumps: number;
  readonly silentJumps: number;
  /** Largest part of Cd by which the mirrored section differed; null where it was not tried. */
  readonly mirror: number | null;
  /** The same of the section seven times as large in the same stream, its roughness with it. */
  readonly scale: number | null;
  readonly milliseconds: number;
}

/** A section at its conditions; null where the draw gives no valid section. */
export function surveySection(drawn: RandomSection): SurveyedCondition[] | null {
  const { incidence, floorGapRatio, conditions } = drawn;
  const contour = buildContour(drawn.spec);
  if (!contour.ok) return null;
  const nodes = gradeNodes(contour.value, Math.min(mostPanels, panelCountForSection(contour.value)));
  if (!nodes.ok) return null;
  const prepared = prepareSection(nodes.value, incidence, CALIBRATED, floorGapRatio);
  if (!prepared.ok) return conditions.map(() => unanswered(prepared.problem.code));
  // The mirror image of a symmetric section in a stream from the other side; over a floor it would be another flow.
  const mirrored =
    contour.value.mirrorSymmetric && incidence !== 0 && floorGapRatio === undefined
      ? prepareSection(nodes.value, -incidence, CALIBRATED)
      : null;
  const scaled = prepareSection(enlarged(nodes.value), incidence, CALIBRATED, floorGapRatio);
  return conditions.map((condition) =>
    surveyCondition(prepared.value, condition, mirrored?.ok ? mirrored.value : null, scaled.ok ? scaled.value : null),
  );
}

function surveyCondition(
  section: PreparedSection,
  condition: FlowCondition,
  mirrored: PreparedSection | null,
  scaled: PreparedSection | null,
): SurveyedCondition {
  const start = performance.now();
  const { states, problem } = solveCondition(section, condition);
  const milliseconds = performance.now() - start;
  if (states.length === 0) return { ...unanswered(problem?.code ?? "no state"), milliseconds };
  const [state] = states;
  const nudged = [
    { ...condition, reynolds: condition.reynolds * nudge },
    { ...condition, turbulenceIntensity: condition.turbulenceIntensity * nudge },
  ].map((other) => solveCondition(section, other).states[0]);
  const jumped = nudged.filter((other) => other === undefined || differ(state, other) > noticed);
  const silent = jumped.filter((other) => state.settled && other?.settled !== false);
  const trips = condition.trips?.map((trip) => ({ ...trip, side: trip.side === "upper" ? "lower" : "upper" }) as const);
  const image = mirrored === null ? undefined : solveCondition(mirrored, { ...condition, trips }).states[0];
  const larger = scaled === null ? undefined : solveCondition(scaled, condition).states[0];
  return {
    answered: true,
    settled: state.settled,
    problem: state.unsettledBy,
    trials: nudged.length,
    jumps: jumped.length,
    silentJumps: silent.length,
    mirror: image === undefined ? null : differ(state, image),
    scale: larger === undefined ? null : differ(state, larger),
    milliseconds,
  };
}

function enlarged(nodes: SectionNodes): SectionNodes {
  const lengths = (values: Float64Array) => values.map((value) => enlargement * value);
  return {
    ...nodes,
    x: lengths(nodes.x),
    y: lengths(nodes.y),
    ds: lengths(nodes.ds),
    arc: lengths(nodes.arc),
    curvature: nodes.curvature.map((value) => value / enlargement),
    perimeter: enlargement * nodes.perimeter,
    area: enlargement ** 2 * nodes.area,
    centroid: [enlargement * nodes.centroid[0], enlargement * nodes.centroid[1]],
  };
}

function unanswered(problem: string): SurveyedCondition {
  return {
    answered: false,
    settled: false,
    problem,
    trials: 0,
    jumps: 0,
    silentJumps: 0,
    mirror: null,
    scale: null,
    milliseconds: 0,
  };
}

function differ(a: SectionState, b: SectionState): number {
  return Math.abs(a.dragCoefficient - b.dragCoefficient) / Math.max(leastDrag, Math.abs(a.dragCoefficient));
}
