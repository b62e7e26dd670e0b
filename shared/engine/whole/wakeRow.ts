import type { StreamGrid } from "./streamGrid";
import { forcesWithCaps } from "./wholeForces";
import { type SeparationLine, type WakeResponses, wakeOf, wakeResponses } from "./wholeWake";

/** Parts of the force on a body over the dynamic pressure and its frontal area, the edge's suction kept. */
export interface ForceParts {
  readonly forebody: number;
  readonly base: number;
  readonly lift: number;
  /** About the centre, over the diameter too; above 0 turns the upper end downstream. */
  readonly moment: number;
  /** What each of {@link SUCTION_CAPS} adds to the drag. */
  readonly lost: readonly number[];
}

/** A separation line with the forces of every base pressure: parabolas in k, in which speeds are nearly linear. */
export interface WakeRow {
  readonly responses: WakeResponses;
  /** Shadow of the surface behind the line over the frontal area. */
  readonly baseShare: number;
  /** Surface ahead of the line, m^2. */
  readonly wettedArea: number;
  /** At {@link NODE_SPEEDS}. */
  readonly nodes: readonly ForceParts[];
}

/** k at which the forces are worked out: Cpb 0, -0.3 and -0.61. */
export const NODE_SPEEDS = [1, 1.14, 1.27] as const;

/** Lowest Cp of a front whose suction is lost, falling; between them the lost suction is linear. */
export const SUCTION_CAPS = [-0.5, -0.75, -1, -1.5, -2.5] as const;

export function wakeRow(grid: StreamGrid, line: SeparationLine): WakeRow {
  const responses = wakeResponses(grid, line);
  const { ahead } = responses;
  let [shadow, wettedArea] = [0, 0];
  for (let at = 0; at < ahead.length; at++) {
    if (ahead[at] < 0) shadow += Math.max(0, grid.normalDownstream[at]) * grid.area[at];
    else wettedArea += grid.area[at];
  }
  const nodes = NODE_SPEEDS.map((speedRatio): ForceParts => {
    const forces = forcesWithCaps(wakeOf(responses, speedRatio), SUCTION_CAPS);
    return {
      forebody: forces.forebodyDrag,
      base: forces.baseDrag,
      lift: forces.lift,
      moment: forces.moment,
      lost: forces.lost.map(({ drag }) => drag),
    };
  });
  return { responses, baseShare: Math.min(1, shadow / grid.frontalArea), wettedArea, nodes };
}

/** Weighted sum of forces. */
function combinedParts(parts: readonly ForceParts[], weights: readonly number[]): ForceParts {
  const sum = (value: (part: ForceParts) => number) =>
    weights.reduce((total, weight, i) => total + weight * value(parts[i]), 0);
  return {
    forebody: sum(({ forebody }) => forebody),
    base: sum(({ base }) => base),
    lift: sum(({ lift }) => lift),
    moment: sum(({ moment }) => moment),
    lost: SUCTION_CAPS.map((_, n) => sum(({ lost }) => lost[n])),
  };
}

/** Forces at k = sqrt(1 - Cpb) by the parabola through the nodes. */
export function forcesAt(nodes: readonly ForceParts[], speedRatio: number): ForceParts {
  const [a, b, c] = NODE_SPEEDS;
  const k = speedRatio;
  return combinedParts(nodes, [
    ((k - b) * (k - c)) / ((a - b) * (a - c)),
    ((k - a) * (k - c)) / ((b - a) * (b - c)),
    ((k - a) * (k - b)) / ((c - a) * (c - b)),
  ]);
}

/** Forces of a cap of the suction, Cp; none where it is below the last. */
export function lostSuctionAt({ lost }: ForceParts, cap: number): number {
  const last = SUCTION_CAPS.length - 1;
  if (cap >= SUCTION_CAPS[0]) return Math.max(0, lost[0]);
  for (let n = 1; n <= last; n++) {
    if (cap >= SUCTION_CAPS[n]) {
      const share = (cap - SUCTION_CAPS[n - 1]) / (SUCTION_CAPS[n] - SUCTION_CAPS[n - 1]);
      return Math.max(0, lost[n - 1] + share * (lost[n] - lost[n - 1]));
    }
  }
  return 0;
}

/** Nodes between those of two rows. */
export function mixedNodes(a: readonly ForceParts[], b: readonly ForceParts[], share: number): readonly ForceParts[] {
  return a.map((own, i) => combinedParts([own, b[i]], [1 - share, share]));
}
