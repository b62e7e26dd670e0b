/** Place on a meridian and its derivative by the piece's parameter: distance from the axis and place along it, m. */
export interface MeridianPlace {
  readonly r: number;
  readonly z: number;
  readonly dr: number;
  readonly dz: number;
}

/**
 * A smooth piece of a meridian, from the lower end of the axis over the rim to the upper end, t from 0 to 1. The body
 * lies on the left.
 */
export interface MeridianCurve {
  at(t: number): MeridianPlace;
  /** Length of the piece, m. */
  readonly length: number;
  /** Curvature, 1/m, positive where convex; the same all along, NaN where it changes. */
  readonly curvature: number;
  /** Angle that the piece turns, rad. */
  readonly turn: number;
}

export function straightCurve(r1: number, z1: number, r2: number, z2: number): MeridianCurve {
  const [dr, dz] = [r2 - r1, z2 - z1];
  return {
    at: (t) => ({ r: r1 + dr * t, z: z1 + dz * t, dr, dz }),
    length: Math.hypot(dr, dz),
    curvature: 0,
    turn: 0,
  };
}

/** r = centreR + radius cos(phi), z = centreZ + radius sin(phi), phi from phi1 to phi2, rad, rising where convex. */
export function arcCurve(centreR: number, centreZ: number, radius: number, phi1: number, phi2: number): MeridianCurve {
  const sweep = phi2 - phi1;
  return {
    at: (t) => {
      const [c, s] = [Math.cos(phi1 + sweep * t), Math.sin(phi1 + sweep * t)];
      return { r: centreR + radius * c, z: centreZ + radius * s, dr: -radius * sweep * s, dz: radius * sweep * c };
    },
    length: radius * Math.abs(sweep),
    curvature: Math.sign(sweep) / radius,
    turn: Math.abs(sweep),
  };
}

/** A whole spheroid: half axis `equatorial` across and `polar` along the axis, m. */
export function spheroidCurve(equatorial: number, polar: number): MeridianCurve {
  const at = (t: number) => {
    const phi = Math.PI * (t - 0.5);
    const [c, s] = [Math.cos(phi), Math.sin(phi)];
    return { r: equatorial * c, z: polar * s, dr: -equatorial * Math.PI * s, dz: polar * Math.PI * c };
  };
  return {
    at,
    length: Math.PI * Math.sqrt((equatorial * equatorial + polar * polar) / 2),
    curvature: Number.NaN,
    turn: Math.PI,
  };
}
