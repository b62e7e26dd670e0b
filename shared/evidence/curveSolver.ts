import type { FlowCondition } from "../solve/condition";
import { traceDragCurve } from "../solve/dragCurve";
import type { PreparedSection } from "../solve/prepareSection";
import type { ConditionOutcome } from "../solve/solution";
import { curveBands } from "../uncertainty/curveBands";
import type { JudgedDragBand } from "../uncertainty/dragBand";

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

/** A solver of a section's drag curves that remembers the newest few of them: a search asks for the same curve again. */
export function curveSolver(section: PreparedSection): CurveSolver {
  const kept = new Map<string, readonly SolvedPoint[]>();
  return (stream, reynoldsNumbers, withBands) => {
    const rising = [...new Set(reynoldsNumbers)].sort((a, b) => a - b);
    const key = [stream.turbulenceIntensity, stream.sandGrainRoughnessRatio, withBands, ...rising].join(" ");
    const solved = kept.get(key) ?? solveCurve(section, stream, rising, withBands);
    kept.delete(key);
    kept.set(key, solved);
    if (kept.size > mostKept) kept.delete(kept.keys().next().value!);
    return reynoldsNumbers.map((reynolds) => solved[rising.indexOf(reynolds)]);
  };
}

const mostKept = 8;

function solveCurve(
  section: PreparedSection,
  stream: CurveStream,
  rising: readonly number[],
  withBands: boolean,
): SolvedPoint[] {
  const conditions = rising.map((reynolds) => ({ ...stream, reynolds }));
  const outcomes = traceDragCurve(section, conditions);
  const bands = withBands ? curveBands(section, conditions, outcomes) : outcomes.map(() => []);
  return outcomes.map((outcome, i) => ({ outcome, bands: bands[i] }));
}
