/**
 * Relations of the lag-entrainment method for a turbulent layer in incompressible flow. Lengths in D, speeds in U.
 * Source: Green, Weeks & Brooman (1977), ARC R&M 3791 (constants from memory).
 */

/** H1 = 3.15 + 1.72 / (H - 1) - 0.01 (H - 1)^2, H above 1. */
export function entrainmentShapeFactor(H: number): number {
  const h = H - 1;
  return 3.15 + 1.72 / h - 0.01 * h * h;
}

/** dH1/dH of {@link entrainmentShapeFactor}; negative. */
export function entrainmentShapeSlope(H: number): number {
  const h = H - 1;
  return -1.72 / (h * h) - 0.02 * h;
}

/** H0 of the layer without pressure gradient, from 1 - 1/H0 = 6.55 sqrt(Cf0 / 2). */
export function plateShapeFactor(Cf0: number): number {
  return 1 / (1 - 6.55 * Math.sqrt(Cf0 / 2));
}

/** Cf of a layer with shape factor H, from (Cf/Cf0 + 0.5) (H/H0 - 0.4) = 0.9; negative beyond separation. */
export function entrainmentFriction(H: number, H0: number, Cf0: number): number {
  return Cf0 * (0.9 / (H / H0 - 0.4) - 0.5);
}

/** Largest shear stress / (rho Ue^2), C_tau = 0.024 C_E + 1.2 C_E^2 + 0.32 Cf0. */
export function maximumStress(CE: number, Cf0: number): number {
  return 0.024 * CE + 1.2 * CE * CE + 0.32 * Cf0;
}

/** Entrainment coefficient C_E that belongs to a largest shear stress, the inverse of {@link maximumStress}. */
export function entrainmentOfStress(stress: number, Cf0: number): number {
  return (-0.024 + Math.sqrt(0.024 * 0.024 + 4.8 * Math.max(0, stress - 0.32 * Cf0))) / 2.4;
}

/** (theta/Ue) dUe/ds of the layer in equilibrium, (1.25/H) [Cf/2 - ((H-1)/(6.432 H))^2]. */
export function equilibriumGradient(H: number, Cf: number): number {
  const shape = (H - 1) / (6.432 * H);
  return (1.25 / H) * (Cf / 2 - shape * shape);
}

/** Entrainment coefficient of the layer in equilibrium, H1 [Cf/2 - (H+1) (theta/Ue dUe/ds)_EQ]. */
export function equilibriumEntrainment(H: number, Cf: number): number {
  return entrainmentShapeFactor(H) * (Cf / 2 - (H + 1) * equilibriumGradient(H, Cf));
}
