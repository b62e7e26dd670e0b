import { degreesOf, percentOf } from "../../numerics/degreesAndPercent";
import type { LayerMethodName } from "../layer/layerMethodName";
import type { Regime, SectionState, SideState, TransitionCause } from "../solution";
import type { Applicability } from "../trust/applicability";
import type { JudgedDragBand } from "../trust/judgedDragBand";
import type { SolvedStream } from "./solveStreams";
import { speedOf } from "./stream";

/** What a slowly rising or a slowly falling speed sits on. */
export type Branch = "rising" | "falling";

/** What every area coefficient of a result refers to. */
export const referenceAreaText = "frontal width x span";

/**
 * One result of a case: one section, one condition, one branch. The keys are those of the JSON and CSV output and carry
 * their units where they are not ratios. What did not converge is null, with the reason in `problem`.
 */
export interface ResultRow {
  /** Name of the section. */
  readonly section: string;
  /** The key that the section sweeps; null without a sweep. */
  readonly sweepKey: string | null;
  /** In the unit that the key names; null without a sweep. */
  readonly sweepValue: number | null;
  /** Nose up. */
  readonly incidenceDegrees: number;
  /** Gap to a floor below; null without a floor. At 0 nothing is said of the lower side and of the lift. */
  readonly floorGapMetres: number | null;
  /** Re = U D / nu. */
  readonly reynolds: number;
  /** null when the case names no fluid. */
  readonly speedMetresPerSecond: number | null;
  /** ks / D. */
  readonly sandGrainRoughnessRatio: number;
  /** Free-stream turbulence intensity. */
  readonly turbulencePercent: number;
  /** How the boundary layers were worked out. */
  readonly layerMethod: LayerMethodName;
  /** Which of the steady states this is. */
  readonly branch: Branch;
  /** False when no steady state was found; the keys that depend on one are then null. */
  readonly converged: boolean;
  /** Kind of separated flow. */
  readonly regime: Regime | null;
  /** True when a section that is symmetric about the stream sheds differently on its two sides. */
  readonly oneSided: boolean | null;
  /** True where the flow is held on the switch between two kinds of layer, a mixture of the two in time. */
  readonly onSwitch: boolean | null;
  /** True where the layers stay attached to the tail and no vortex street stands behind it. */
  readonly attached: boolean | null;
  /** False where the answer is noise: a change of a few parts in ten thousand moves it, see the band. */
  readonly settled: boolean | null;
  /** How the upper layer ends. */
  readonly separationStateUpper: SideState | null;
  /** How the lower layer ends. */
  readonly separationStateLower: SideState | null;
  /** What turned the upper layer turbulent; null also when it stays laminar. */
  readonly transitionCauseUpper: TransitionCause | null;
  /** What turned the lower layer turbulent; null also when it stays laminar. */
  readonly transitionCauseLower: TransitionCause | null;
  /** Angle at the section's centre from the front, for any shape. */
  readonly separationAngleUpperDegrees: number | null;
  /** Angle at the section's centre from the front, for any shape. */
  readonly separationAngleLowerDegrees: number | null;
  /** Arc length from the front stagnation point / reference width. */
  readonly separationArcUpper: number | null;
  /** Arc length from the front stagnation point / reference width. */
  readonly separationArcLower: number | null;
  /** Where a bubble's layer comes back to the wall, arc length from the front stagnation point / reference width; null without a bubble. */
  readonly reattachmentArcUpper: number | null;
  /** The same of the lower side. */
  readonly reattachmentArcLower: number | null;
  /** Share of the time, 0 to 1, for which the layers that leave the front are back on the sides; null of a flow that keeps its kind. */
  readonly reattachedTimeShare: number | null;
  /** Drag coefficient of the open wake that the row is the time mean of; null of a flow that keeps its kind. */
  readonly openWakeDragCoefficient: number | null;
  /** Drag coefficient of the flow whose layers are back on the sides; null of a flow that keeps its kind. */
  readonly reattachedDragCoefficient: number | null;
  /** Cpb, uniform behind the separation points. */
  readonly basePressureCoefficient: number | null;
  /** Lowest Cp on the surface. */
  readonly minimumPressureCoefficient: number | null;
  /** S = f D / U. */
  readonly strouhal: number | null;
  /** Of one vortex pair; null without a fluid. */
  readonly sheddingFrequencyHertz: number | null;
  /** The share of the pressures in the drag coefficient. */
  readonly pressureDragCoefficient: number | null;
  /** The share of skin friction in the drag coefficient. */
  readonly frictionDragCoefficient: number | null;
  /** Cd = drag per span / (rho U^2 D / 2). */
  readonly dragCoefficient: number | null;
  /** Mean of the drag coefficient over all that is not known of the engine's errors; null where none was worked out. */
  readonly dragCoefficientExpected: number | null;
  /** 5 % of the drag coefficient itself, by the engine's errors against published values. */
  readonly dragCoefficientLow: number | null;
  /** 95 % of the same. */
  readonly dragCoefficientHigh: number | null;
  /** 5 % of what another tunnel would measure, with its bias and scatter. */
  readonly measurementDragCoefficientLow: number | null;
  /** 95 % of the same. */
  readonly measurementDragCoefficientHigh: number | null;
  /** Probability that the layers do not separate laminar on both sides. */
  readonly pastCrisisShare: number | null;
  /** Speed at which a drag crisis near by comes on this branch, 5 %; null without one or without a fluid. */
  readonly crisisSpeedLowMetresPerSecond: number | null;
  /** Median of the same. */
  readonly crisisSpeedMidMetresPerSecond: number | null;
  /** 95 % of the same. */
  readonly crisisSpeedHighMetresPerSecond: number | null;
  /** Whether the engine was compared with published values at such a section and condition. */
  readonly applicability: Applicability | null;
  /** What was not compared, in one sentence; null inside the checked range. */
  readonly applicabilityReason: string | null;
  /** Cl on the same width, positive upward. */
  readonly liftCoefficient: number | null;
  /** null without a fluid of known density. */
  readonly dragPerSpanNewtonsPerMetre: number | null;
  /** D, the section's extent across the stream, m. */
  readonly referenceWidth: number;
  /** What area coefficients refer to. */
  readonly referenceArea: typeof referenceAreaText;
  /** null when the section could not be prepared. */
  readonly panelCount: number | null;
  /** Steady states found at this condition, the ones on neither branch included. */
  readonly stateCount: number;
  /** Why a state is missing; null when all is well. */
  readonly problem: string | null;
}

/** What a row says of its section; a {@link PreparedShape} says all of it but a sweep. */
export interface RowSection {
  readonly name: string;
  /** The key that the section sweeps and its value; null or left out without a sweep. */
  readonly sweep?: { readonly key: string; readonly value: number } | null;
  /** Nose up, rad. */
  readonly incidence: number;
  /** Gap to a floor below, m; null without a floor. */
  readonly floorGap: number | null;
  /** D, m. */
  readonly referenceWidth: number;
  /** null where the section could not be prepared. */
  readonly panelCount: number | null;
  /** "integral" when left out. */
  readonly layerMethod?: LayerMethodName;
}

/** The row of one branch of a solved stream; its band's keys are null where no bands were asked for. */
export function branchRow(section: RowSection, solved: SolvedStream, branch: Branch): ResultRow {
  const { outcome, bands } = solved;
  const index = outcome[branch];
  const state = index === null ? null : outcome.states[index];
  const reason = outcome.problem?.message ?? (state === null ? "no steady state was found" : null);
  return {
    ...conditionKeys(section, solved, branch),
    ...(state === null ? emptyKeys : stateKeys(section, solved, state)),
    ...bandKeys(index === null ? undefined : bands[index], section, solved),
    referenceWidth: section.referenceWidth,
    referenceArea: referenceAreaText,
    panelCount: section.panelCount,
    stateCount: outcome.states.length,
    problem: reason,
  };
}

/** The rows of a solved stream: of the rising branch, and of the falling one where it differs. */
export function branchRows(section: RowSection, solved: SolvedStream): ResultRow[] {
  const rising = branchRow(section, solved, "rising");
  return solved.outcome.rising === solved.outcome.falling ? [rising] : [rising, branchRow(section, solved, "falling")];
}

function conditionKeys(section: RowSection, { stream, condition }: SolvedStream, branch: Branch) {
  return {
    section: section.name,
    sweepKey: section.sweep?.key ?? null,
    sweepValue: section.sweep?.value ?? null,
    incidenceDegrees: degreesOf(section.incidence),
    floorGapMetres: section.floorGap,
    reynolds: condition.reynolds,
    speedMetresPerSecond: speedOf(stream, section.referenceWidth),
    sandGrainRoughnessRatio: condition.sandGrainRoughnessRatio,
    turbulencePercent: percentOf(condition.turbulenceIntensity),
    layerMethod: section.layerMethod ?? "integral",
    branch,
  };
}

const emptyKeys = {
  converged: false,
  regime: null,
  oneSided: null,
  onSwitch: null,
  attached: null,
  settled: null,
  separationStateUpper: null,
  separationStateLower: null,
  transitionCauseUpper: null,
  transitionCauseLower: null,
  separationAngleUpperDegrees: null,
  separationAngleLowerDegrees: null,
  separationArcUpper: null,
  separationArcLower: null,
  reattachmentArcUpper: null,
  reattachmentArcLower: null,
  reattachedTimeShare: null,
  openWakeDragCoefficient: null,
  reattachedDragCoefficient: null,
  basePressureCoefficient: null,
  minimumPressureCoefficient: null,
  strouhal: null,
  sheddingFrequencyHertz: null,
  pressureDragCoefficient: null,
  frictionDragCoefficient: null,
  dragCoefficient: null,
  liftCoefficient: null,
  dragPerSpanNewtonsPerMetre: null,
} as const;

function bandKeys(
  band: JudgedDragBand | undefined,
  { referenceWidth }: RowSection,
  { stream, condition }: SolvedStream,
) {
  const speed = speedOf(stream, referenceWidth);
  const crisis = band?.crisisReynolds ?? null;
  const speedAt = (reynolds: number | undefined) =>
    reynolds === undefined || speed === null ? null : (speed * reynolds) / condition.reynolds;
  return {
    dragCoefficientExpected: band?.expected ?? null,
    dragCoefficientLow: band?.low ?? null,
    dragCoefficientHigh: band?.high ?? null,
    measurementDragCoefficientLow: band?.measurementLow ?? null,
    measurementDragCoefficientHigh: band?.measurementHigh ?? null,
    pastCrisisShare: band?.pastCrisisShare ?? null,
    crisisSpeedLowMetresPerSecond: speedAt(crisis?.low),
    crisisSpeedMidMetresPerSecond: speedAt(crisis?.mid),
    crisisSpeedHighMetresPerSecond: speedAt(crisis?.high),
    applicability: band?.applicability ?? null,
    applicabilityReason: band?.reason ?? null,
  };
}

function stateKeys({ floorGap, referenceWidth }: RowSection, { stream }: SolvedStream, state: SectionState) {
  const speed = speedOf(stream, referenceWidth);
  const density = stream.fluid?.density ?? null;
  const lower = floorGap === 0 ? null : state.lower;
  return {
    converged: true,
    regime: state.regime,
    oneSided: state.oneSided,
    onSwitch: state.onSwitch,
    attached: state.attached,
    settled: state.settled,
    separationStateUpper: state.upper.state,
    separationStateLower: lower?.state ?? null,
    transitionCauseUpper: state.upper.transitionCause,
    transitionCauseLower: lower?.transitionCause ?? null,
    separationAngleUpperDegrees: degreesOf(state.upper.separationAngle),
    separationAngleLowerDegrees: lower === null ? null : degreesOf(lower.separationAngle),
    separationArcUpper: state.upper.separationArc,
    separationArcLower: lower?.separationArc ?? null,
    reattachmentArcUpper: reattachmentArc(state, "upper"),
    reattachmentArcLower: lower === null ? null : reattachmentArc(state, "lower"),
    reattachedTimeShare: state.intermittency?.reattachedShare ?? null,
    openWakeDragCoefficient: state.intermittency?.open.dragCoefficient ?? null,
    reattachedDragCoefficient: state.intermittency?.reattached.dragCoefficient ?? null,
    basePressureCoefficient: state.basePressureCoefficient,
    minimumPressureCoefficient: state.minimumPressureCoefficient,
    strouhal: state.strouhal,
    sheddingFrequencyHertz: speed === null ? null : (state.strouhal * speed) / referenceWidth,
    pressureDragCoefficient: state.pressureDragCoefficient,
    frictionDragCoefficient: state.frictionDragCoefficient,
    dragCoefficient: state.dragCoefficient,
    liftCoefficient: lower === null ? null : state.liftCoefficient,
    dragPerSpanNewtonsPerMetre:
      speed === null || density === null ? null : 0.5 * density * speed ** 2 * referenceWidth * state.dragCoefficient,
  };
}

/** Where a side's layer comes back; of a flow that goes to and fro, in the part of the time in which it does. */
function reattachmentArc(state: SectionState, side: "upper" | "lower"): number | null {
  return (state.intermittency?.reattached ?? state)[side].bubble?.reattachmentArc ?? null;
}
