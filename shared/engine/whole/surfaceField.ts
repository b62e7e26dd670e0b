import { alongMeridian, type MeridianPanels } from "./meridianPanels";

/**
 * A potential on the surface of a body of revolution as a series in cos(m theta), theta measured round the axis from
 * downstream; flows that are their own mirror image in the plane of stream and axis have no other terms.
 * Index m; each array has shape [count] of the meridian's nodes, m^2/s per m/s of stream.
 */
export type PotentialHarmonics = readonly Float64Array[];

/** Velocity on the surface, harmonic by harmonic, per m/s of stream; arrays of shape [count]. */
export interface SurfaceField {
  /** Along the meridian towards the upper pole: sum of along[m] cos(m theta). */
  readonly along: readonly Float64Array[];
  /** Round the axis, theta rising: sum of round[m] sin(m theta). */
  readonly round: readonly Float64Array[];
  /** Divergence of the surface velocity, 1/m: sum of divergence[m] cos(m theta). */
  readonly divergence: readonly Float64Array[];
}

/** u_s = d phi / d s, u_theta = -m phi_m sin(m theta) / r, div u = (1/r) d(r u_s)/ds - m^2 phi_m / r^2. */
export function surfaceField(panels: MeridianPanels, potential: PotentialHarmonics): SurfaceField {
  const { r } = panels;
  const along = potential.map((phi) => alongMeridian(panels, phi));
  const round = potential.map((phi, m) => phi.map((value, i) => (-m * value) / r[i]));
  const divergence = potential.map((phi, m) => {
    const spread = alongMeridian(
      panels,
      along[m].map((speed, i) => speed * r[i]),
    );
    return spread.map((value, i) => value / r[i] - (m * m * phi[i]) / (r[i] * r[i]));
  });
  return { along, round, divergence };
}

/** a + factor b, harmonic by harmonic. */
export function addPotential(a: PotentialHarmonics, b: PotentialHarmonics, factor: number): PotentialHarmonics {
  return a.map((own, m) => own.map((value, i) => value + factor * b[m][i]));
}
