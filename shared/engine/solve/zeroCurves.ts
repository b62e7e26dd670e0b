import type { SideLayer } from "../layer/sideLayer";
import type { SeparationTable } from "./separationTable";

/** A piece of the curve of separation points at which one side's layer separates where the flow lets it: straight, between two held distances of the other side. */
export interface CurvePiece {
  /** Own distance and the other side's, at both ends, node steps from the front. */
  readonly own: readonly [number, number];
  readonly other: readonly [number, number];
}

/** A layer followed to an assumed separation point, and the arc / D of that point from the stagnation point. */
export interface FollowedLayer extends Pick<SideLayer, "state" | "residual"> {
  readonly end: number;
}

/** A pair of separation distances, node steps from the front along either side. */
export interface SeparationPair {
  readonly lower: number;
  readonly upper: number;
}

/** A residual larger than this many times the way to the next probe does not pass through zero and back on that way. */
const HIDING_SLOPE = 1;
/** Every how many distances of the table a layer is followed at least. */
const COARSE_STRIDE = 4;
/** Pieces are carried on by this part of their length, so that crossings at their ends are not lost. */
const OVERHANG = 0.15;

/**
 * The stable zero curves of one side's residual over the table of separation points, in pieces. Where a curve begins or
 * ends between two held distances it is carried on level to the next one: a crossing too many costs one more search,
 * one too few a state.
 * @param withEdges whether a layer that is attached at the last place before the wakes end, or separated at the first one
 * behind such a gap, counts as a crossing there: it may lie between two places of the table
 * @param follow the layer of that side, its own distance and the other side's given by their indices; null where no wake stands
 */
export function zeroCurves(
  table: SeparationTable,
  withEdges: boolean,
  follow: (own: number, held: number) => FollowedLayer | null,
): CurvePiece[] {
  const columns = table.held.map((held) => crossingsAt(table.distances, withEdges, (own) => follow(own, held)));
  const pieces: CurvePiece[] = [];
  for (let k = 0; k + 1 < columns.length; k++) {
    const other = [table.distances[table.held[k]], table.distances[table.held[k + 1]]] as const;
    for (const own of linked(columns[k], columns[k + 1])) pieces.push({ own, other });
  }
  return pieces;
}

/** Pairs of separation distances at which curves of the two sides cross. */
export function curveCrossings(lower: readonly CurvePiece[], upper: readonly CurvePiece[]): SeparationPair[] {
  return lower.flatMap((a) =>
    upper.flatMap((b) => {
      // lower = a.own(t) = b.other(s) and upper = a.other(t) = b.own(s), both linear.
      const [aOwn, aOther] = [a.own[1] - a.own[0], a.other[1] - a.other[0]];
      const [bOwn, bOther] = [b.own[1] - b.own[0], b.other[1] - b.other[0]];
      const determinant = aOther * bOther - aOwn * bOwn;
      const [dLower, dUpper] = [b.other[0] - a.own[0], b.own[0] - a.other[0]];
      const t = (dUpper * bOther - dLower * bOwn) / determinant;
      const s = (dUpper * aOwn - dLower * aOther) / determinant;
      const inside = (share: number) => share >= -OVERHANG && share <= 1 + OVERHANG;
      return inside(t) && inside(s) ? [{ lower: a.own[0] + t * aOwn, upper: a.other[0] + t * aOther }] : [];
    }),
  );
}

/** Distances at which a layer passes from attached to separated, rising; found coarsely where nothing can hide. */
function crossingsAt(
  distances: readonly number[],
  withEdges: boolean,
  follow: (own: number) => FollowedLayer | null,
): number[] {
  const found: number[] = [];
  const search = (from: number, before: FollowedLayer | null, to: number, after: FollowedLayer | null): void => {
    if (to - from === 1) {
      if (before === null || after === null) {
        const atEdge = (before !== null && before.residual > 0) || (after !== null && after.residual <= 0);
        if (withEdges && atEdge) found.push((distances[from] + distances[to]) / 2);
        return;
      }
      if (!(before.residual > 0 && after.residual <= 0)) return;
      const share = before.state === after.state ? before.residual / (before.residual - after.residual) : 0.5;
      found.push(distances[from] + share * (distances[to] - distances[from]));
    } else if (before === null || after === null || mayHide(before, after)) {
      const middle = (from + to) >> 1;
      const between = follow(middle);
      search(from, before, middle, between);
      search(middle, between, to, after);
    }
  };
  const last = distances.length - 1;
  let before = follow(0);
  for (let i = 0; i < last; i += COARSE_STRIDE) {
    const next = Math.min(i + COARSE_STRIDE, last);
    const after = follow(next);
    search(i, before, next, after);
    before = after;
  }
  return found;
}

function mayHide(before: FollowedLayer, after: FollowedLayer): boolean {
  if (before.residual > 0 !== after.residual > 0 || before.state !== after.state) return true;
  return (
    Math.min(Math.abs(before.residual), Math.abs(after.residual)) < HIDING_SLOPE * Math.abs(after.end - before.end)
  );
}

/** Joins the crossings of two neighbouring columns, nearest first; one that finds no partner is carried on level. */
function linked(a: readonly number[], b: readonly number[]): (readonly [number, number])[] {
  const pairs = a
    .flatMap((x, i) => b.map((y, j) => ({ i, j, apart: Math.abs(x - y) })))
    .sort((p, q) => p.apart - q.apart);
  const partner = new Map<number, number>();
  const taken = new Set<number>();
  for (const { i, j } of pairs) {
    if (partner.has(i) || taken.has(j)) continue;
    partner.set(i, j);
    taken.add(j);
  }
  return [
    ...a.map((x, i) => [x, b[partner.get(i) ?? -1] ?? x] as const),
    ...b.filter((_, j) => !taken.has(j)).map((y) => [y, y] as const),
  ];
}
