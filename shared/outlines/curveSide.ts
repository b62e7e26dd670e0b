import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { apart, type Place } from "./outline";

/** Controls nearer to their end than this part of the curve's size are moved out, along the curve, to this. */
const leastReach = 1e-3;
/** Controls nearer to the chord than this part of it make a line. */
const flat = 1e-9;

/** A cubic curve as a side; one that is straight becomes a line, and none stops at its ends. */
export function curveSide(from: Place, first: Place, second: Place, to: Place): OutlineSide {
  const size = Math.max(apart(from, to), apart(from, first), apart(second, to));
  if (!(size > 0)) return { from };
  const off = (point: Place) =>
    Math.abs((to[0] - from[0]) * (point[1] - from[1]) - (to[1] - from[1]) * (point[0] - from[0]));
  const along = (point: Place) =>
    ((to[0] - from[0]) * (point[0] - from[0]) + (to[1] - from[1]) * (point[1] - from[1])) / apart(from, to) ** 2;
  const isBetween = (place: number) => place >= 0 && place <= 1;
  const isFlat = Math.max(off(first), off(second)) <= flat * size * size;
  if (isFlat && isBetween(along(first)) && isBetween(along(second))) return { from };
  const least = leastReach * size;
  const start = apart(from, first) >= least ? first : towards(from, apart(from, second) > least ? second : to, least);
  const end = apart(second, to) >= least ? second : towards(to, apart(first, to) > least ? first : from, least);
  return { from, controls: [start, end] };
}

function towards(from: Place, to: Place, distance: number): Place {
  const share = distance / (apart(from, to) || 1);
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}
