import type { Regime } from "../../engine/solution";
import type { DragBand } from "../../engine/trust/dragInterval";
import { type Result, success } from "../../result";
import { type HeldPuck, type PuckApplicability, prepareHeldPuck } from "../puck/public";
import { puckCauses } from "./causes";
import { confinedBand } from "./confinedBand";
import { type ConfinedDrag, largestBlockageRatio } from "./confinedDrag";
import { confinedPuckDrag } from "./confinedPuckDrag";
import { type CurveRequest, type CurveStream, curveKey, risingOnce } from "./curveSolver";
import { keepNewest } from "./keepNewest";
import type { MeasuredBody, Predictor } from "./measuredBody";
import type { PredictedPoint } from "./predictAt";

/** The predicted drag of a puck in an unbounded stream, on the area of its attitude. */
interface FreeDrag extends DragBand {
  readonly regime: Regime | null;
}

/** Free drag at rising Reynolds numbers on the diameter; null where nothing was found. */
type FreeCurve = (request: CurveRequest) => readonly (FreeDrag | null)[];

/**
 * A puck as a measured design, held edge-on or face-on: drag on the frontal area of that attitude, Reynolds number on the
 * diameter. The rising branch alone is known of it, so that the direction of the speed makes no difference.
 */
export function measuredPuck(puck: HeldPuck): Result<MeasuredBody> {
  const prepared = prepareHeldPuck(puck);
  if (!prepared.ok) return prepared;
  const { solve, applicability } = prepared.value;
  const width = puck.spec.diameterMetres;
  const curve: FreeCurve = ({ stream, rising, withBands }) => {
    const { turbulenceIntensity, sandGrainRoughnessRatio } = stream;
    const solved = solve(
      { turbulenceIntensity, sandGrainRoughness: sandGrainRoughnessRatio * width, withBands },
      rising,
    );
    if (!solved.ok) return rising.map(() => null);
    return solved.value.map(({ drag, regime }) => ({ ...drag.dragCoefficient, regime }));
  };
  return success({
    predict: predictor(keepNewest(curve, curveKey), applicability),
    width,
    studied: null,
    description: null,
    causes: (conditions, base) => puckCauses(conditions, base, width, puck.attitude),
  });
}

/** Walls raise the speed that the puck meets: it is solved at the stated Reynolds numbers and once more at the raised ones. */
function predictor(curve: FreeCurve, applicability: PuckApplicability): Predictor {
  return (settings, wanted, withBands) => {
    const { blockageRatio } = settings;
    const stated = wanted.map(({ reynolds }) => reynolds);
    const isFree = blockageRatio === 0;
    const first = atEach(curve, settings, stated, withBands && isFree);
    const met = isFree ? first : atEach(curve, settings, raised(stated, first, blockageRatio), withBands);
    return met.map((drag) => (drag === null ? null : asTested(drag, blockageRatio, withBands, applicability)));
  };
}

function atEach(
  curve: FreeCurve,
  { turbulenceIntensity, sandGrainRoughnessRatio }: CurveStream,
  reynoldsNumbers: readonly number[],
  withBands: boolean,
): (FreeDrag | null)[] {
  const rising = risingOnce(reynoldsNumbers);
  const found = curve({ stream: { turbulenceIntensity, sandGrainRoughnessRatio }, rising, withBands });
  return reynoldsNumbers.map((reynolds) => found[rising.indexOf(reynolds)]);
}

function raised(stated: readonly number[], free: readonly (FreeDrag | null)[], blockageRatio: number): number[] {
  return stated.map((reynolds, i) => {
    const own = free[i];
    return reynolds * (own === null ? 1 : (walls(own.expected, blockageRatio)?.speedRatio ?? 1));
  });
}

function walls(drag: number, blockageRatio: number): ConfinedDrag | null {
  if (!(blockageRatio >= 0 && blockageRatio <= largestBlockageRatio)) {
    throw new RangeError(`blockage ratio is ${blockageRatio}; it must be from 0 to ${largestBlockageRatio}.`);
  }
  return confinedPuckDrag(drag, blockageRatio);
}

function asTested(
  { regime, low, expected, high }: FreeDrag,
  blockageRatio: number,
  withBands: boolean,
  applicability: PuckApplicability,
): PredictedPoint | null {
  const band = withBands ? { low, expected, high } : { low: expected, expected, high: expected };
  const shown = confinedBand(band, (drag) => walls(drag, blockageRatio));
  if (shown === null) return null;
  return {
    dragCoefficient: shown.dragCoefficient,
    low: shown.low,
    high: shown.high,
    regime,
    strouhal: null,
    basePressureCoefficient: null,
    separationAngleDegrees: null,
    applicability: withBands ? applicability : null,
    applicabilityReason: null,
  };
}
