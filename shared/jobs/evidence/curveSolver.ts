import type { FlowCondition } from "../../engine/condition";
import type { ConditionOutcome } from "../../engine/solution";
import { traceDragCurve } from "../../engine/solve/dragCurve";
import type { PreparedSection } from "../../engine/solve/preparedSection";
import { curveBands } from "../../engine/trust/curveBands";
import type { JudgedDragBand } from "../../engine/trust/dragBand";
import { keepNewest } from "./keepNewest";

/** One solved Reynolds number of a curve; the bands are those of the outcome's states, none when not asked for. */
export interface SolvedPoint {
  readonly outcome: ConditionOutcome;
  readonly bands: readonly JudgedDragBand[];
}

/** The stream of a curve. */
export type CurveStream = Pick<FlowCondition, "turbulenceIntensity" | "sandGrainRoughnessRatio">;

/** Solves a curve at Reynolds numbers in any order, and gives the points in that order. */
export type CurveSolver = (
  stream: CurveStream,
  reynoldsNumbers: readonly number[],
  withBands: boolean,
) => SolvedPoint[];

/** One curve that is asked for. */
export interface CurveRequest {
  readonly stream: CurveStream;
  /** Each once, rising. */
  readonly rising: readonly number[];
  readonly withBands: boolean;
}

/** The same for equal requests, different for others. */
export function curveKey({ stream, rising, withBands }: CurveRequest): string {
  return [stream.turbulenceIntensity, stream.sandGrainRoughnessRatio, withBands, ...rising].join(" ");
}

/** Reynolds numbers in any order as a curve has them: each once, rising. */
export function risingOnce(reynoldsNumbers: readonly number[]): number[] {
  return [...new Set(reynoldsNumbers)].sort((a, b) => a - b);
}

/** A solver of a section's drag curves that remembers the newest few of them. */
export function curveSolver(section: PreparedSection): CurveSolver {
  const solve = keepNewest((request: CurveRequest) => solveCurve(section, request), curveKey);
  return (stream, reynoldsNumbers, withBands) => {
    const rising = risingOnce(reynoldsNumbers);
    const solved = solve({ stream, rising, withBands });
    return reynoldsNumbers.map((reynolds) => solved[rising.indexOf(reynolds)]);
  };
}

function solveCurve(section: PreparedSection, { stream, rising, withBands }: CurveRequest): readonly SolvedPoint[] {
  const conditions = rising.map((reynolds) => ({ ...stream, reynolds }));
  const outcomes = traceDragCurve(section, conditions);
  const bands = withBands ? curveBands(section, conditions, outcomes) : outcomes.map(() => []);
  return outcomes.map((outcome, i) => ({ outcome, bands: bands[i] }));
}
