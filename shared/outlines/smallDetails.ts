import { smallestRadiusRatio } from "../engine/geometry/dimensionChecks";
import { smoothKink } from "../engine/geometry/outlineContour";
import { turnBetween } from "../engine/geometry/roundedCorner";
import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { curvatureAt, type SidePath, sidePath } from "../engine/geometry/sidePath";
import { apart, chainExtent, type Place } from "./outline";

/** A corner that a detail becomes may lie so many of the detail's own lengths away from it. */
const farthestCorner = 4;
/** Places along a side at which its radius is looked at. */
const radiusPlaces = 8;
/** Parts of the extent within which a place is on a line. */
const negligible = 1e-9;
const leastSides = 3;
/** An outline with more such details is left to the engine's refusal. */
const mostReplaced = 200;

/**
 * Replaces sides too short for the corners' smallest radius, and arcs and curves sharper than it, by the corner in which
 * their neighbours' directions meet, smallest first. What cannot be replaced is left to the engine's checks.
 * @returns the sides and how many were replaced
 */
export function withoutSmallDetails(given: readonly OutlineSide[]): {
  sides: readonly OutlineSide[];
  replaced: number;
} {
  const size = Math.max(...chainExtent([{ sides: given, end: given[0].from }]));
  const smallest = smallestRadiusRatio * Math.min(...chainExtent([{ sides: given, end: given[0].from }]));
  let sides = [...given];
  let replaced = 0;
  while (sides.length > leastSides && replaced < mostReplaced) {
    const paths = sides.map((side, i) => sidePath(side, sides[(i + 1) % sides.length].from));
    const lengths = paths.map(lengthOf);
    const small = sides
      .map((_, i) => i)
      .filter((i) => isTooSmall(paths, lengths, i, smallest))
      .sort((a, b) => lengths[a] - lengths[b]);
    let next: OutlineSide[] | null = null;
    for (let k = 0; k < small.length && next === null; k++)
      next = withoutSide(sides, paths, lengths, small[k], negligible * size);
    if (next === null) break;
    sides = next;
    replaced++;
  }
  return { sides, replaced };
}

function isTooSmall(paths: readonly SidePath[], lengths: readonly number[], i: number, radius: number): boolean {
  const count = paths.length;
  const path = paths[i];
  if (path.kind !== "line") {
    for (let k = 0; k <= radiusPlaces; k++) {
      if (Math.abs(curvatureAt(path.at(k / radiusPlaces))) * radius > 1 + smoothKink) return true;
    }
  }
  const reach = (turn: number) => (Math.abs(turn) < smoothKink ? 0 : radius * Math.tan(Math.abs(turn) / 2));
  const needed =
    reach(turnBetween(paths[(i + count - 1) % count], path)) + reach(turnBetween(path, paths[(i + 1) % count]));
  return needed > lengths[i] * (1 + negligible);
}

/** The outline with one side replaced by the corner of its neighbours; null where they do not meet nearby. */
function withoutSide(
  sides: readonly OutlineSide[],
  paths: readonly SidePath[],
  lengths: readonly number[],
  i: number,
  near: number,
): OutlineSide[] | null {
  const count = sides.length;
  const [before, behind] = [(i + count - 1) % count, (i + 1) % count];
  const end = paths[before].at(1);
  const start = paths[behind].at(0);
  const determinant = end.dx * start.dy - end.dy * start.dx;
  if (determinant === 0) return null;
  const [gapX, gapY] = [start.x - end.x, start.y - end.y];
  const ahead = (gapX * start.dy - gapY * start.dx) / determinant;
  const back = (end.dy * gapX - end.dx * gapY) / determinant;
  const corner: Place = [end.x + ahead * end.dx, end.y + ahead * end.dy];
  const farthest = farthestCorner * lengths[i];
  const from: Place = [end.x, end.y];
  const to: Place = [start.x, start.y];
  if (!(ahead >= 0 && back <= 0) || Math.max(apart(from, corner), apart(to, corner)) > farthest) return null;
  const next: OutlineSide[] = [];
  for (let k = 0; k < count; k++) {
    if (k === i) {
      // Lines run on to the corner; arcs and curves are led there by a short line.
      if (paths[before].kind !== "line" && apart(from, corner) > near) next.push({ from });
      if (paths[behind].kind !== "line" && apart(corner, to) > near) next.push({ from: corner });
    } else if (k === behind && paths[behind].kind === "line") next.push({ ...sides[k], from: corner });
    else next.push(sides[k]);
  }
  return next.length < leastSides ? null : next;
}

function lengthOf({ at }: SidePath): number {
  let length = 0;
  let last = at(0);
  for (let k = 1; k <= 2 * radiusPlaces; k++) {
    const here = at(k / (2 * radiusPlaces));
    length += Math.hypot(here.x - last.x, here.y - last.y);
    last = here;
  }
  return length;
}
