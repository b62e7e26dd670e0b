import { expandSweep } from "../../../shared/document/expandSweep";
import type { LiveCurves } from "../../../workers/solverApi";

/** What the live curves are traced over. */
export interface CurveRanges {
  readonly reynoldsNumbers: readonly number[];
  /** ks / D: a smooth wall, then a finely to a coarsely rough one. */
  readonly roughnessRatios: readonly number[];
  readonly withBands: boolean;
}

/** Curves of a design at rest. */
export const fullCurves: CurveRanges = {
  reynoldsNumbers: expandSweep({ from: 1e4, to: 1e7, count: 49, spacing: "log" }),
  roughnessRatios: [0, ...expandSweep({ from: 1e-5, to: 2e-2, count: 14, spacing: "log" })],
  withBands: true,
};

/** Reynolds numbers that every sketch has, and how close together more of them stand about a crisis. */
const sketchStations = [1e4, 3e4, 7e4, 1.6e5, 4e5, 1e6, 1e7];
const aroundCrisis = [0.82, 0.92, 0.98, 1.02, 1.08, 1.22];
/**
 * The points of a sketch: few, and more where the last curve had its crisis, which hardly moves from one sketch to the
 * next. @returns rising
 */
export function sketchReynolds(last: Pick<LiveCurves, "overReynolds"> | null): number[] {
  const crisis = last === null ? null : computedCrisis(last.overReynolds);
  return [...sketchStations, ...(crisis === null ? [] : aroundCrisis.map((share) => share * crisis))]
    .filter((one) => one >= 1e4 && one <= 1e7)
    .sort((a, b) => a - b);
}

/** Where the rising branch leaves laminar separation, half way between two points. */
function computedCrisis(rows: LiveCurves["overReynolds"]): number | null {
  const rising = rows.filter(({ branch, regime }) => branch === "rising" && regime !== null);
  for (let i = 1; i < rising.length; i++) {
    if (rising[i - 1].regime === "subcritical" && rising[i].regime !== "subcritical") {
      return Math.sqrt(rising[i - 1].reynolds * rising[i].reynolds);
    }
  }
  return null;
}
