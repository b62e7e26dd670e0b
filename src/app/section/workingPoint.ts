import type { ResultRow } from "../../../shared/engine/section/resultRow";
import type { Applicability } from "../../../shared/engine/trust/applicability";
import type { LiveCurves } from "../../../workers/solverApi";
import type { Solved } from "./solved";

/** What is known of the drag of a design in its stream. */
export interface WorkingPoint {
  readonly speed: number;
  readonly reynolds: number;
  readonly expected: number;
  readonly low: number;
  readonly high: number;
  readonly pastCrisisShare: number;
  readonly applicability: Applicability;
  readonly reason: string | null;
}

/** A row this near in Reynolds number is that of the point itself. */
const sameReynolds = 1e-6;

/**
 * Of the solved design: from its own band, or while a handle is held, when it has none, from the newest sketch of its
 * drag curve. null before either is there.
 */
export function workingPoint(solved: Solved | null, curves: LiveCurves | null): WorkingPoint | null {
  if (solved === null) return null;
  const { band, condition } = solved.solution;
  const { speed } = solved.design;
  const { reynolds } = condition;
  if (band !== null) return { speed, reynolds, ...band };
  const row = curves === null ? null : nearestJudged(curves.overReynolds, reynolds);
  return row === null ? null : { speed, reynolds, ...row };
}

function nearestJudged(rows: readonly ResultRow[], reynolds: number) {
  let best: Omit<WorkingPoint, "speed" | "reynolds"> | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const row of rows) {
    const { dragCoefficientExpected: expected, dragCoefficientLow: low, dragCoefficientHigh: high } = row;
    const { pastCrisisShare, applicability, applicabilityReason: reason } = row;
    const away = Math.abs(Math.log(row.reynolds / reynolds));
    if (row.branch !== "rising" || away >= least || expected === null) continue;
    if (low === null || high === null || pastCrisisShare === null || applicability === null) continue;
    least = away;
    best = { expected, low, high, pastCrisisShare, applicability, reason };
    if (away < sameReynolds) break;
  }
  return best;
}
