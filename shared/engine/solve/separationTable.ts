import type { SectionFlow } from "../flow/sectionFlow";
import type { Side, SideStations } from "../layer/sideStations";
import type { SeparatedFlow } from "./separatedFlow";

/** Distances tried along a side, and the shares of the way around the contour between which they lie. */
const DISTANCES = 27;
const FIRST_SHARE = 0.03;
const LAST_SHARE = 0.81;
/** Every how many of them the other side is held. */
const HELD_STRIDE = 4;

/**
 * Both sides of a section laid out over a table of separation points: one side's point moves while the other's is held
 * at a few places. Like the wakes of a symmetric section it does not depend on the condition, and serves every one.
 * Distances run from the front along either side, in node steps.
 */
export interface SeparationTable {
  /** Rising, shape [n]. */
  readonly distances: readonly number[];
  /** Indices of the distances at which the other side is held. */
  readonly held: readonly number[];
  /** Stations of a side that separates at one distance while the other one does at another (indices); null where no wake stands. */
  stations(side: Side, own: number, held: number): SideStations | null;
}

/** @param flowAt the flow that separates at two distances, the lower side's first; null where there is none */
export function separationTable(
  flow: SectionFlow,
  flowAt: (lower: number, upper: number) => SeparatedFlow | null,
): SeparationTable {
  const { count } = flow.nodes;
  const distances = Array.from(
    { length: DISTANCES },
    (_, i) => count * (FIRST_SHARE + ((LAST_SHARE - FIRST_SHARE) * i) / (DISTANCES - 1)),
  );
  const held = distances.map((_, i) => i).filter((i) => i % HELD_STRIDE === 1);
  const known = new Map<string, { readonly lower: SideStations; readonly upper: SideStations } | null>();
  return {
    distances,
    held,
    stations: (side, own, other) => {
      const [lower, upper] = side === "lower" ? [own, other] : [other, own];
      const key = `${lower} ${upper}`;
      let both = known.get(key);
      if (both === undefined) {
        const solved = flowAt(distances[lower], distances[upper]);
        // The flow itself is let go: only its sides are needed again.
        both = solved === null ? null : { lower: solved.lower, upper: solved.upper };
        known.set(key, both);
      }
      return both === null ? null : both[side];
    },
  };
}
