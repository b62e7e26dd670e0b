import type { SolvedStream } from "../../engine/section/solveStreams";
import type { Regime, SectionState } from "../../engine/solution";
import type { Applicability } from "../../engine/trust/applicability";
import type { JudgedDragBand } from "../../engine/trust/judgedDragBand";
import type { SectionDescription } from "../../engine/trust/sectionDescription";
import { degreesOf } from "../../numerics/degreesAndPercent";
import { endRelief, type PuckApplicability } from "../puck/public";
import { confinedBand } from "./confinedBand";
import { confinedDrag } from "./confinedDrag";
import type { CurveSolver } from "./curveSolver";
import type { FlowSettings } from "./flowSettings";
import type { SpeedDirection } from "./measurement";

/** What the engine says of one measured point, as the test would show it: free ends and walls included. */
export interface PredictedPoint {
  readonly dragCoefficient: number;
  /** 90 % band; without bands both are the drag coefficient. */
  readonly low: number;
  readonly high: number;
  /** Of a puck edge-on that of its plan section; null face-on, where the rim decides. */
  readonly regime: Regime | null;
  /** null for a puck, as are the next two. */
  readonly strouhal: number | null;
  readonly basePressureCoefficient: number | null;
  /** Mean of both sides, from the front. */
  readonly separationAngleDegrees: number | null;
  /** null without bands. */
  readonly applicability: Applicability | PuckApplicability | null;
  readonly applicabilityReason: string | null;
}

/** What the engine says of a section, which has all of it. */
export interface SectionPrediction extends PredictedPoint {
  readonly regime: Regime;
  readonly strouhal: number;
  readonly basePressureCoefficient: number;
  readonly separationAngleDegrees: number;
}

/** Where a prediction is wanted. */
export interface WantedPoint {
  /** As the test states it: on the speed of the empty tunnel where walls are still in the values. */
  readonly reynolds: number;
  /** null when unknown: the rising branch, the band holding both. */
  readonly direction: SpeedDirection | null;
}

/**
 * Predictions at any number of points, in their order; null where the engine finds no state or the walls are too near.
 * Free ends scale drag by the end relief of the state's regime. Walls raise the speed that the section meets: the curve is
 * solved once at the stated Reynolds numbers and once more at the raised ones.
 * @param withBands false leaves the bands out, for searches that only need the drag
 */
export function predictAt(
  solve: CurveSolver,
  description: SectionDescription,
  settings: FlowSettings,
  wanted: readonly WantedPoint[],
  withBands: boolean,
): (SectionPrediction | null)[] {
  const stated = wanted.map(({ reynolds }) => reynolds);
  const first = solve(settings, stated, withBands && settings.blockageRatio === 0);
  const reading = (solved: readonly SolvedStream[]) =>
    wanted.map(({ direction }, i) => readPoint(solved[i], direction, settings, description));
  if (settings.blockageRatio === 0) return reading(first);
  const met = reading(first).map((point, i) => (point === null ? stated[i] : stated[i] * point.speedRatio));
  return reading(solve(settings, met, withBands));
}

function readPoint(
  { outcome, bands }: SolvedStream,
  direction: SpeedDirection | null,
  settings: FlowSettings,
  description: SectionDescription,
): (SectionPrediction & { readonly speedRatio: number }) | null {
  const index = outcome[direction ?? "rising"];
  if (index === null) return null;
  const branches = direction === null ? [index, outcome.falling ?? index] : [index];
  const shown = branches.map((branch) => asTested(outcome.states[branch], bands[branch], settings, description));
  const own = shown[0];
  if (own === null || shown.some((one) => one === null)) return null;
  const state = outcome.states[index];
  return {
    dragCoefficient: own.dragCoefficient,
    low: Math.min(...shown.map((one) => one!.low)),
    high: Math.max(...shown.map((one) => one!.high)),
    regime: state.regime,
    strouhal: state.strouhal * own.speedRatio,
    basePressureCoefficient: 1 - (1 - state.basePressureCoefficient) * own.speedRatio ** 2,
    separationAngleDegrees: degreesOf((state.upper.separationAngle + state.lower.separationAngle) / 2),
    applicability: bands[index]?.applicability ?? null,
    applicabilityReason: bands[index]?.reason ?? null,
    speedRatio: own.speedRatio,
  };
}

/** Drag of a state with its band, with ends and walls as in the test. */
function asTested(
  state: SectionState,
  band: JudgedDragBand | undefined,
  { lengthToWidth, blockageRatio }: FlowSettings,
  { lengthToHeight }: SectionDescription,
) {
  const relief = lengthToWidth === null ? noRelief : endRelief(lengthToWidth, state.regime);
  const expected = state.dragCoefficient * relief.expected;
  const free =
    band === undefined
      ? { low: expected, high: expected }
      : { low: Math.min(band.low * relief.low, expected), high: Math.max(band.high * relief.high, expected) };
  return confinedBand({ expected, ...free }, (drag) => confinedDrag(drag, blockageRatio, lengthToHeight));
}

const noRelief = { low: 1, expected: 1, high: 1 };
