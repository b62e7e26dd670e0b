import { findRoot } from "../../numerics/rootFinder";
import { circularPath, curvatureAt, type SidePath } from "./sidePath";

/** The arc in place of a corner: where it leaves the side before and meets the one behind, and itself. */
export interface CornerArc {
  /** u on the side before, at most 1. */
  readonly leaves: number;
  /** u on the side behind, at least 0. */
  readonly meets: number;
  readonly path: SidePath;
}

const mostIterations = 40;
/** Error of the arc's centre at which the search ends, in radii. */
const closeEnough = 1e-13;
const lastDecimals = 1e-10;
/** Share of a side to which the search's start is found. */
const guessTolerance = 1e-4;

/** Angle from the end of one side to the start of the next, rad, in (-pi, pi], positive where the corner is convex. */
export function turnBetween(before: SidePath, behind: SidePath): number {
  const end = before.at(1);
  const start = behind.at(0);
  return Math.atan2(end.dx * start.dy - end.dy * start.dx, end.dx * start.dx + end.dy * start.dy);
}

/**
 * The circular arc that touches both sides of a corner: its centre lies one radius to the inner side of both, found by
 * Newton's method from the arc that fits their tangents at the corner.
 * @param radius m
 * @returns null where there is none on the two sides, since they are too short or too curved
 */
export function cornerArc(before: SidePath, behind: SidePath, radius: number): CornerArc | null {
  const turn = turnBetween(before, behind);
  const inner = Math.sign(turn) * radius;
  const reach = radius * Math.tan(Math.abs(turn) / 2);
  let u = 1 - shareWithin((share) => before.at(1 - share), reach);
  let v = shareWithin((share) => behind.at(share), reach);
  for (let i = 0; i < mostIterations; i++) {
    u = Math.min(1, Math.max(0, u));
    v = Math.min(1, Math.max(0, v));
    const a = before.at(u);
    const b = behind.at(v);
    const speedA = Math.hypot(a.dx, a.dy);
    const speedB = Math.hypot(b.dx, b.dy);
    const centreX = a.x - (inner * a.dy) / speedA;
    const centreY = a.y + (inner * a.dx) / speedA;
    const gapX = b.x - (inner * b.dy) / speedB - centreX;
    const gapY = b.y + (inner * b.dx) / speedB - centreY;
    const scale = radius + Math.abs(a.x) + Math.abs(a.y);
    if (Math.hypot(gapX, gapY) <= closeEnough * scale || (i === mostIterations - 1 && isClose(gapX, gapY, scale))) {
      const from = Math.atan2(a.y - centreY, a.x - centreX);
      const turned = Math.atan2(a.dx * b.dy - a.dy * b.dx, a.dx * b.dx + a.dy * b.dy);
      if (!(turned * turn > 0 && u > 0 && v < 1)) return null;
      return { leaves: u, meets: v, path: circularPath([centreX, centreY], radius, from, turned) };
    }
    // Along a path its centre line moves by the path's own step times (1 - distance * curvature).
    const alongA = 1 - inner * curvatureAt(a);
    const alongB = 1 - inner * curvatureAt(b);
    const [ax, ay] = [a.dx * alongA, a.dy * alongA];
    const [bx, by] = [b.dx * alongB, b.dy * alongB];
    const determinant = ax * by - ay * bx;
    if (!(alongA > 0 && alongB > 0) || determinant === 0) return null;
    u += (gapX * by - gapY * bx) / determinant;
    v += (gapX * ay - gapY * ax) / determinant;
  }
  return null;
}

function isClose(gapX: number, gapY: number, scale: number): boolean {
  return Math.hypot(gapX, gapY) <= lastDecimals * scale;
}

/** The share of a side, from a corner at 0, at which it is a distance away from it; 1 where it never is. */
function shareWithin(at: (share: number) => { readonly x: number; readonly y: number }, distance: number): number {
  const corner = at(0);
  const away = (share: number) => Math.hypot(at(share).x - corner.x, at(share).y - corner.y) - distance;
  return away(1) <= 0 ? 1 : findRoot(away, 0, 1, { tolerance: guessTolerance });
}
