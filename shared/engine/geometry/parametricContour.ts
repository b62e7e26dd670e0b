import { gaussIntegral } from "../../numerics/gaussLegendre";
import { findRoot } from "../../numerics/rootFinder";
import { intervalAt } from "../../numerics/tableLookup";
import { areaMoments } from "./areaMoments";
import type { ContourBend, ContourPoint } from "./contour";
import type { ContourPiece, Path } from "./contourPiece";

/** A stretch that turns further than this is halved, rad. */
const largestTurn = 0.25;
/** A stretch is halved until its arc length changes by less than this fraction of the whole. */
const arcTolerance = 1e-15;
const deepestHalving = 40;

export interface ParametricPiece extends ContourPiece {
  /** Arc length from the start of the piece at a parameter, m. */
  arcAt(t: number): number;
  /** Parameter at an arc length from the start of the piece, m. */
  parameterAt(arc: number): number;
  /** Speed |d(position)/dt| at a parameter, m. */
  speedAt(t: number): number;
}

/**
 * A piece of contour given by position and derivatives as functions of a parameter. Arc length by Gauss-Legendre
 * quadrature over stretches that are halved until it no longer changes, its inverse by Newton's method (to about 1e-14
 * of the length).
 * @param path   walked counter-clockwise, with a speed above 0
 * @param breaks parameters, increasing, from the start to the end, between which the path is smooth
 * @param whole  length that the tolerance of the arc length goes by, m; the piece's own when left out
 */
export function parametricPiece(path: Path, breaks: ArrayLike<number>, whole?: number): ParametricPiece {
  const speedAt = (t: number) => {
    const { dx, dy } = path(t);
    return Math.hypot(dx, dy);
  };
  const { parameters, lengths } = stretches(path, speedAt, breaks, whole);
  const count = lengths.length;
  const starts = new Float64Array(count + 1);
  for (let i = 0; i < count; i++) starts[i + 1] = starts[i] + lengths[i];
  const length = starts[count];

  const parameterAt = (arc: number) => {
    const i = intervalAt(starts, arc);
    const target = arc - starts[i];
    const low = parameters[i];
    const high = parameters[i + 1];
    return findRoot((t) => gaussIntegral(speedAt, low, t) - target, low, high, {
      endValues: [Math.min(0, -target), Math.max(0, lengths[i] - target)],
      slope: speedAt,
      guess: low + ((high - low) * target) / lengths[i],
      valueTolerance: 1e-15 * length,
    });
  };
  return {
    length,
    at: (arc) => pointOn(path, parameterAt(arc)),
    arcAt: (t) => {
      const i = intervalAt(parameters, t);
      return starts[i] + gaussIntegral(speedAt, parameters[i], t);
    },
    parameterAt,
    speedAt,
    moments: areaMoments(path, parameters),
    bends: bendsOf(path, parameters, starts),
  };
}

/** Position, unit tangent and curvature at a parameter. */
function pointOn(path: Path, t: number): ContourPoint {
  const { x, y, dx, dy, ddx, ddy } = path(t);
  const speed = Math.hypot(dx, dy);
  return { x, y, tangentX: dx / speed, tangentY: dy / speed, curvature: (dx * ddy - dy * ddx) / speed ** 3 };
}

/** Cuts the path into stretches on which the quadrature is exact to rounding and the tangent turns little. */
function stretches(path: Path, speedAt: (t: number) => number, breaks: ArrayLike<number>, whole = 0) {
  let scale = whole;
  for (let i = 0; i + 1 < breaks.length && whole === 0; i++) scale += gaussIntegral(speedAt, breaks[i], breaks[i + 1]);
  const parameters = [breaks[0]];
  const lengths: number[] = [];
  const add = (a: number, b: number, whole: number, depth: number): void => {
    const middle = (a + b) / 2;
    const first = gaussIntegral(speedAt, a, middle);
    const second = gaussIntegral(speedAt, middle, b);
    const fine =
      Math.abs(first + second - whole) <= arcTolerance * scale &&
      Math.abs(turning(path, a, middle)) + Math.abs(turning(path, middle, b)) <= largestTurn;
    if (fine || depth === deepestHalving) {
      parameters.push(b);
      lengths.push(whole);
      return;
    }
    add(a, middle, first, depth + 1);
    add(middle, b, second, depth + 1);
  };
  for (let i = 0; i + 1 < breaks.length; i++) {
    add(breaks[i], breaks[i + 1], gaussIntegral(speedAt, breaks[i], breaks[i + 1]), 0);
  }
  return { parameters: Float64Array.from(parameters), lengths: Float64Array.from(lengths) };
}

/** Angle from the tangent at a to the tangent at b, rad, in (-pi, pi]. */
function turning(path: Path, a: number, b: number): number {
  const start = path(a);
  const end = path(b);
  return Math.atan2(start.dx * end.dy - start.dy * end.dx, start.dx * end.dx + start.dy * end.dy);
}

/** One bend per stretch: halving makes them the same whichever way the path is walked. */
function bendsOf(path: Path, parameters: Readonly<Float64Array>, starts: Readonly<Float64Array>): ContourBend[] {
  return Array.from({ length: parameters.length - 1 }, (_, i) => ({
    arc: (starts[i] + starts[i + 1]) / 2,
    length: starts[i + 1] - starts[i],
    turning: turning(path, parameters[i], parameters[i + 1]),
  }));
}
