import type { DesignSpace, Evaluation } from "./designSpace";

/**
 * A list of points being worked through: plain data to save and load, so that a run goes on where it stopped. Points
 * may be handed to several workers; the order of their answers does not matter.
 */
export interface PointRun {
  readonly space: DesignSpace;
  readonly points: readonly (readonly number[])[];
  /** Shape [points]; null where still open. */
  readonly evaluations: readonly (Evaluation | null)[];
}

export function startRun(space: DesignSpace, points: readonly (readonly number[])[]): PointRun {
  return { space, points, evaluations: points.map(() => null) };
}

export interface OpenPoint {
  readonly index: number;
  readonly variables: readonly number[];
}

/** The next open points, at most `count`, without those in `handedOut` (at work elsewhere). */
export function openPoints(run: PointRun, count: number, handedOut: ReadonlySet<number> = new Set()): OpenPoint[] {
  const open: OpenPoint[] = [];
  for (let index = 0; index < run.points.length && open.length < count; index++) {
    if (run.evaluations[index] === null && !handedOut.has(index)) open.push({ index, variables: run.points[index] });
  }
  return open;
}

/** The run with one answer more. */
export function recordPoint(run: PointRun, index: number, evaluation: Evaluation): PointRun {
  if (!(index in run.points)) throw new RangeError(`point ${index} is not one of the ${run.points.length} points.`);
  return { ...run, evaluations: run.evaluations.map((known, i) => (i === index ? evaluation : known)) };
}

/** Share of the points that are done, 0 to 1. */
export function runProgress(run: PointRun): number {
  if (run.points.length === 0) return 1;
  return run.evaluations.filter((evaluation) => evaluation !== null).length / run.points.length;
}
