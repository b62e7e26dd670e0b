import { type Meridian, pieceMoment, pieceSurfaceMoment } from "./meridian";

/** Integrals over a solid at unit density, about the origin of its meridian, the axis being z. */
export interface SolidFigures {
  /** m^3. */
  readonly volume: number;
  /** Integral of z over the volume, m^4. */
  readonly axialMoment: number;
  /** Integral of the squared distance from the axis, m^5. */
  readonly inertiaAxis: number;
  /** Integral of the squared distance from a line through the origin across the axis, m^5. */
  readonly inertiaDiameter: number;
}

export const emptySolid: SolidFigures = { volume: 0, axialMoment: 0, inertiaAxis: 0, inertiaDiameter: 0 };

/**
 * Figures of the solid that a meridian sweeps, in closed form: each volume integral of f(r, z) 2 pi r becomes, by
 * Green's theorem, an integral of its antiderivative in r along the walk dz.
 */
export function revolve(meridian: Meridian): SolidFigures {
  const moment = (p: number, q: number) => meridian.reduce((sum, piece) => sum + pieceMoment(piece, p, q), 0);
  return {
    volume: Math.PI * moment(2, 0),
    axialMoment: Math.PI * moment(2, 1),
    inertiaAxis: (Math.PI / 2) * moment(4, 0),
    inertiaDiameter: (Math.PI / 4) * moment(4, 0) + Math.PI * moment(2, 2),
  };
}

/** Surface that a meridian sweeps, m^2: 2 pi times the integral of r ds (Pappus). */
export function sweptSurface(meridian: Meridian): number {
  return 2 * Math.PI * meridian.reduce((sum, piece) => sum + pieceSurfaceMoment(piece), 0);
}

/** Area of the whole section (both halves), m^2: twice the integral of r dz. */
export function sectionArea(meridian: Meridian): number {
  return 2 * meridian.reduce((sum, piece) => sum + pieceMoment(piece, 1, 0), 0);
}

/** Weighted sum of solids: weights are densities (kg/m^3) or signs. */
export function combineSolids(parts: readonly (readonly [number, SolidFigures])[]): SolidFigures {
  return parts.reduce<SolidFigures>(
    (sum, [weight, part]) => ({
      volume: sum.volume + weight * part.volume,
      axialMoment: sum.axialMoment + weight * part.axialMoment,
      inertiaAxis: sum.inertiaAxis + weight * part.inertiaAxis,
      inertiaDiameter: sum.inertiaDiameter + weight * part.inertiaDiameter,
    }),
    emptySolid,
  );
}
