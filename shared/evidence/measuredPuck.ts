import type { DragBand, PuckDrag } from "../puck/dragBand";
import { prepareFaceOn } from "../puck/faceOnFlow";
import type { PuckSpec } from "../puck/puckSpec";
import { dragFaceOn, dragUpright, type FiguredPuck } from "../puckcase/orientationDrag";
import { edgeOnApplicability, faceOnApplicability } from "../puckcase/puckApplicability";
import { preparePlan, prepareProfiles, solveSections } from "../puckcase/puckFlow";
import type { PuckApplicability } from "../puckcase/puckResult";
import { surfaceNotes } from "../puckcase/puckSurface";
import { type Result, success } from "../result";
import type { Regime } from "../solve/solution";
import type { PuckAttitude } from "../tunnel/tunnelShape";
import { puckCauses } from "./causes";
import { type ConfinedDrag, largestBlockageRatio } from "./confinedDrag";
import { confinedPuckDrag } from "./confinedPuckDrag";
import { type CurveRequest, type CurveStream, curveKey, risingOnce } from "./curveSolver";
import { keepNewest } from "./keepNewest";
import type { MeasuredBody, Predictor } from "./measuredBody";
import type { PredictedPoint } from "./predictAt";

/** A puck as it was held. */
export interface HeldPuck extends FiguredPuck {
  readonly attitude: PuckAttitude;
}

/** The predicted drag of a puck in an unbounded stream, on the area of its attitude. */
interface FreeDrag extends DragBand {
  readonly regime: Regime | null;
}

/** Free drag at rising Reynolds numbers on the diameter; null where nothing was found. */
type FreeCurve = (request: CurveRequest) => readonly (FreeDrag | null)[];

/** m^2/s: any value serves, since only the Reynolds number matters. */
const anyViscosity = 1e-6;
const sectioning = { panelCount: 120, chordRatios: [0.7, 1] };

/**
 * A puck as a measured design, held edge-on or face-on: drag on the frontal area of that attitude, Reynolds number on the
 * diameter. The rising branch alone is known of it, so that the direction of the speed makes no difference.
 */
export function measuredPuck(puck: HeldPuck): Result<MeasuredBody> {
  const { spec, attitude } = puck;
  const solved = attitude === "edgeOn" ? edgeOnCurve(puck) : faceOnCurve(spec);
  if (!solved.ok) return solved;
  const { curve, applicability } = solved.value;
  const kept = keepNewest(curve, curveKey);
  return success({
    predict: predictor(kept, applicability),
    width: spec.diameterMetres,
    description: null,
    causes: (conditions, base) => puckCauses(conditions, base, spec.diameterMetres, attitude),
  });
}

interface SolvablePuck {
  readonly curve: FreeCurve;
  readonly applicability: PuckApplicability;
}

function edgeOnCurve(puck: HeldPuck): Result<SolvablePuck> {
  const { spec } = puck;
  const plan = preparePlan(sectioning.panelCount);
  if (!plan.ok) return plan;
  const profiles = prepareProfiles(spec, sectioning, { kind: "open" });
  if (!profiles.ok) return profiles;
  const prepared = { plan: plan.value, profiles: profiles.value };
  const notes = surfaceNotes(spec);
  const curve: FreeCurve = ({ stream, rising, withBands }) => {
    const speeds = rising.map((reynolds) => speedAt(reynolds, spec));
    const finish = stream.sandGrainRoughnessRatio * spec.diameterMetres;
    const sections = solveSections({ spec, finish }, prepared, {
      speeds,
      kinematicViscosity: anyViscosity,
      turbulenceIntensity: stream.turbulenceIntensity,
      relativeError: withBands ? null : 0,
    });
    if (!sections.ok) return speeds.map(() => null);
    return speeds.map((speed, i) => {
      const drag = dragUpright(puck, { open: sections.value, notes }, speed, anyViscosity);
      return freeDrag(drag, sections.value.plan(rising[i]).regime);
    });
  };
  return success({ curve, applicability: edgeOnApplicability({ spec }, null) });
}

function faceOnCurve(spec: PuckSpec): Result<SolvablePuck> {
  const solved = prepareFaceOn(spec);
  const faceOn = solved.ok ? solved.value : null;
  const curve: FreeCurve = ({ stream, rising }) =>
    rising.map((reynolds) => {
      const flow = { faceOn, turbulencePercent: 100 * stream.turbulenceIntensity };
      return freeDrag(dragFaceOn(spec, flow, speedAt(reynolds, spec), anyViscosity), null);
    });
  return success({ curve, applicability: faceOnApplicability({ faceOn }) });
}

function speedAt(reynolds: number, { diameterMetres }: PuckSpec): number {
  return (reynolds * anyViscosity) / diameterMetres;
}

function freeDrag(drag: Result<PuckDrag>, regime: Regime | null): FreeDrag | null {
  return drag.ok ? { ...drag.value.dragCoefficient, regime } : null;
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
    return reynolds * (own === null ? 1 : (walls(own.best, blockageRatio)?.speedRatio ?? 1));
  });
}

function walls(drag: number, blockageRatio: number): ConfinedDrag | null {
  if (!(blockageRatio >= 0 && blockageRatio <= largestBlockageRatio)) {
    throw new RangeError(`blockage ratio is ${blockageRatio}; it must be from 0 to ${largestBlockageRatio}.`);
  }
  return confinedPuckDrag(drag, blockageRatio);
}

function asTested(
  { low, best, high, regime }: FreeDrag,
  blockageRatio: number,
  withBands: boolean,
  applicability: PuckApplicability,
): PredictedPoint | null {
  const shown = walls(best, blockageRatio);
  if (shown === null) return null;
  // Above the largest drag that the method takes the band ends at the best value's own ratio.
  const edge = (drag: number) => walls(drag, blockageRatio)?.dragCoefficient ?? (drag * shown.dragCoefficient) / best;
  return {
    dragCoefficient: shown.dragCoefficient,
    low: withBands ? edge(low) : shown.dragCoefficient,
    high: withBands ? edge(high) : shown.dragCoefficient,
    regime,
    strouhal: null,
    basePressureCoefficient: null,
    separationAngleDegrees: null,
    applicability: withBands ? applicability : null,
    applicabilityReason: null,
  };
}
