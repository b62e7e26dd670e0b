import { completeElliptic } from "../../numerics/ellipticIntegrals";

/** Velocity in a half-plane through the axis, m/s: along the axis and away from it. */
export interface AxialVelocity {
  readonly along: number;
  readonly outward: number;
}

/**
 * Velocity of a ring vortex of unit circulation (1 m^2/s) about the x axis, on the axis towards +x.
 * Source: Lewis (1991), Vortex Element Methods, eqs. 4.7 and 4.8 (after Gibson 1972).
 * @param x, r   place, m, off the ring
 * @param x0, r0 station and radius of the ring, m
 */
export function ringVortexVelocity(x: number, r: number, x0: number, r0: number): AxialVelocity {
  const dx = x - x0;
  const far = Math.hypot(r + r0, dx);
  const near2 = (r - r0) ** 2 + dx * dx;
  const { K, E } = completeElliptic((4 * r * r0) / (far * far));
  const along = (K + ((r0 * r0 - r * r - dx * dx) / near2) * E) / (2 * Math.PI * far);
  const outward = r === 0 ? 0 : (dx / (2 * Math.PI * r * far)) * (((r0 * r0 + r * r + dx * dx) / near2) * E - K);
  return { along, outward };
}

/**
 * Velocity of a ring source that blows 1 m^2/s per length of the ring, 2 pi r0 in all.
 * Source: the gradient of the ring's potential, -K / (pi far) per length (Lamb 1932, Hydrodynamics, on rings).
 */
export function ringSourceVelocity(x: number, r: number, x0: number, r0: number): AxialVelocity {
  const dx = x - x0;
  const far = Math.hypot(r + r0, dx);
  const near2 = (r - r0) ** 2 + dx * dx;
  const { K, E } = completeElliptic((4 * r * r0) / (far * far));
  const along = (r0 * dx * E) / (Math.PI * far * near2);
  const outward = r === 0 ? 0 : (r0 / (2 * Math.PI * r * far)) * (K + ((r * r - r0 * r0 - dx * dx) / near2) * E);
  return { along, outward };
}
