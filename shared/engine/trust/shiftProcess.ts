import { choleskyOf, solveLowerInPlace } from "../../numerics/cholesky";
import { bodyCorrelation, type ErrorParameters } from "./errorCovariance";
import type { ErrorPoint } from "./errorPoint";

/** The shift of a crisis that was measured, in standard deviations from its mean. */
export interface KnownShift {
  /** The body in its stream, see `crisisPoint`. */
  readonly point: ErrorPoint;
  readonly standardShift: number;
}

/** Shifts of crises in standard deviations from their mean: mean and covariance, given those that are known. */
export interface StandardShifts {
  readonly mean: Float64Array;
  /** Row by row, shape [bodies * bodies]. */
  readonly covariance: Float64Array;
}

/** A body in its stream where only how alike two are counts, not at which speed they are looked at. */
export function crisisPoint(point: ErrorPoint): ErrorPoint {
  return { ...point, regime: "critical", logReynolds: 0 };
}

/** So that two measured bodies that are quite alike leave a matrix that can be factored. */
const JITTER = 1e-9;

/**
 * Shifts of the crises of bodies, jointly normal with those that are known. Rasmussen & Williams (2006), eq. 2.23 to 2.24.
 * @param points of the bodies, by `crisisPoint`
 */
export function standardShiftsAt(
  known: readonly KnownShift[],
  points: readonly ErrorPoint[],
  parameters: ErrorParameters,
): StandardShifts {
  const m = points.length;
  const n = known.length;
  const between = (a: ErrorPoint, b: ErrorPoint) => bodyCorrelation(a, b, parameters);
  const factor = choleskyOf(
    Float64Array.from({ length: n * n }, (_, k) => {
      const i = Math.floor(k / n);
      const j = k % n;
      return between(known[i].point, known[j].point) + (i === j ? JITTER : 0);
    }),
    n,
  );
  const values = Float64Array.from(known, ({ standardShift }) => standardShift);
  solveLowerInPlace(factor, values);
  const reduced = points.map((point) => {
    const toKnown = Float64Array.from(known, (each) => between(point, each.point));
    solveLowerInPlace(factor, toKnown);
    return toKnown;
  });
  const mean = Float64Array.from(reduced, (row) => dot(row, values));
  const covariance = new Float64Array(m * m);
  for (let i = 0; i < m; i++) {
    for (let j = 0; j <= i; j++) {
      const value = between(points[i], points[j]) - dot(reduced[i], reduced[j]);
      covariance[i * m + j] = i === j ? Math.max(0, value) : value;
      covariance[j * m + i] = covariance[i * m + j];
    }
  }
  return { mean, covariance };
}

function dot(a: Readonly<Float64Array>, b: Readonly<Float64Array>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}
