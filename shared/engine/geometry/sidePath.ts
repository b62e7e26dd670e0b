import type { ContourPiece, PathPoint } from "./contourPiece";
import { arcPiece, linePiece, type Point } from "./lineArcContour";
import type { OutlineSide } from "./sectionSpec";

/** One side of an outline as a function of u, 0 at its start and 1 at its end. */
export type SidePath =
  | {
      readonly kind: "line" | "arc";
      /** Position and derivatives by u, m. */
      at(u: number): PathPoint;
      /** The stretch between two values of u as a piece of contour. */
      piece(from: number, to: number): ContourPiece;
    }
  | { readonly kind: "curve"; at(u: number): PathPoint };

/** A side from its start to the start of the next. */
export function sidePath({ from, bulge, controls }: OutlineSide, to: Point): SidePath {
  if (controls !== undefined) return curvePath(from, controls[0], controls[1], to);
  return bulge === undefined || bulge === 0 ? linePath(from, to) : arcPath(from, to, bulge);
}

/** Signed curvature, 1/m, positive where the path turns left. */
export function curvatureAt({ dx, dy, ddx, ddy }: PathPoint): number {
  return (dx * ddy - dy * ddx) / Math.hypot(dx, dy) ** 3;
}

function linePath(from: Point, to: Point): SidePath {
  const [spanX, spanY] = [to[0] - from[0], to[1] - from[1]];
  const place = (u: number): Point => [from[0] + spanX * u, from[1] + spanY * u];
  return {
    kind: "line",
    at: (u) => ({ x: from[0] + spanX * u, y: from[1] + spanY * u, dx: spanX, dy: spanY, ddx: 0, ddy: 0 }),
    // The ends are the given points themselves, without the rounding of a product.
    piece: (a, b) => linePiece(a === 0 ? from : place(a), b === 1 ? to : place(b)),
  };
}

function arcPath(from: Point, to: Point, bulge: number): SidePath {
  const turn = 4 * Math.atan(bulge);
  const [spanX, spanY] = [to[0] - from[0], to[1] - from[1]];
  // Distance of the centre from the chord, to its left, over the chord's length.
  const reach = (1 - bulge * bulge) / (4 * bulge);
  const centre: Point = [(from[0] + to[0]) / 2 - spanY * reach, (from[1] + to[1]) / 2 + spanX * reach];
  const radius = Math.hypot(from[0] - centre[0], from[1] - centre[1]);
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  return circularPath(centre, radius, start, turn);
}

/** A circular arc about a centre. @param start, turn rad */
export function circularPath(centre: Point, radius: number, start: number, turn: number): SidePath {
  return {
    kind: "arc",
    at: (u) => {
      const x = radius * Math.cos(start + turn * u);
      const y = radius * Math.sin(start + turn * u);
      return {
        x: centre[0] + x,
        y: centre[1] + y,
        dx: -turn * y,
        dy: turn * x,
        ddx: -turn * turn * x,
        ddy: -turn * turn * y,
      };
    },
    piece: (a, b) => arcPiece(centre, radius, start + turn * a, turn * (b - a)),
  };
}

/** A cubic Bézier curve. Source of its derivatives: Farin (2002), Curves and Surfaces for CAGD, sec. 5.3. */
function curvePath(p0: Point, p1: Point, p2: Point, p3: Point): SidePath {
  const at = (u: number): PathPoint => {
    const v = 1 - u;
    const value = (i: 0 | 1) => v * v * (v * p0[i] + 3 * u * p1[i]) + u * u * (3 * v * p2[i] + u * p3[i]);
    const slope = (i: 0 | 1) => 3 * (v * v * (p1[i] - p0[i]) + 2 * u * v * (p2[i] - p1[i]) + u * u * (p3[i] - p2[i]));
    const bend = (i: 0 | 1) => 6 * (v * (p2[i] - 2 * p1[i] + p0[i]) + u * (p3[i] - 2 * p2[i] + p1[i]));
    return { x: value(0), y: value(1), dx: slope(0), dy: slope(1), ddx: bend(0), ddy: bend(1) };
  };
  return { kind: "curve", at };
}
