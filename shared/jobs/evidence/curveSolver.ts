import type { FlowCondition } from "../../engine/condition";
import type { PreparedShape } from "../../engine/section/prepareShape";
import { type SolvedStream, solveStreams } from "../../engine/section/solveStreams";
import { keepNewest } from "./keepNewest";

/** The stream of a curve. */
export type CurveStream = Pick<FlowCondition, "turbulenceIntensity" | "sandGrainRoughnessRatio">;

/** Solves a curve at Reynolds numbers in any order, and gives the points in that order. */
export type CurveSolver = (
  stream: CurveStream,
  reynoldsNumbers: readonly number[],
  withBands: boolean,
) => SolvedStream[];

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
export function curveSolver(shape: PreparedShape): CurveSolver {
  const solve = keepNewest((request: CurveRequest) => solveCurve(shape, request), curveKey);
  return (stream, reynoldsNumbers, withBands) => {
    const rising = risingOnce(reynoldsNumbers);
    const solved = solve({ stream, rising, withBands });
    return reynoldsNumbers.map((reynolds) => solved[rising.indexOf(reynolds)]);
  };
}

function solveCurve(shape: PreparedShape, { stream, rising, withBands }: CurveRequest): readonly SolvedStream[] {
  const streams = rising.map((reynolds) => ({ ...stream, reynolds }));
  return solveStreams(shape, streams, withBands ? "all" : "none");
}
