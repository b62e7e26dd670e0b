/** Frictionless contact of elastic half-spaces whose surfaces are round. Source: Johnson, Contact Mechanics (1985), ch. 4 and 5. */

/** E / (1 - nu^2), Pa. @param youngsModulus Pa, above 0 @param poissonRatio 0 to 0.5 */
export function planeStrainModulus(youngsModulus: number, poissonRatio: number): number {
  return youngsModulus / (1 - poissonRatio * poissonRatio);
}

/** Contact modulus E* of two half-spaces with plane-strain moduli a and b, Pa. Johnson (1985), eq. 4.18. */
export function contactModulus(a: number, b: number): number {
  return 1 / (1 / a + 1 / b);
}

export interface PointContact {
  /** m. */
  readonly contactRadius: number;
  /** Pa, at the middle. */
  readonly peakPressure: number;
  /** How far the bodies have come nearer, m. */
  readonly approach: number;
}

/**
 * Sphere on a plane. Johnson (1985), eqs. 4.22 to 4.24.
 * @param force   N, above 0
 * @param radius  m, above 0
 * @param modulus E*, Pa, above 0
 */
export function hertzSphere(force: number, radius: number, modulus: number): PointContact {
  const contactRadius = Math.cbrt((3 * force * radius) / (4 * modulus));
  return {
    contactRadius,
    peakPressure: (3 * force) / (2 * Math.PI * contactRadius * contactRadius),
    approach: (contactRadius * contactRadius) / radius,
  };
}

/**
 * Cylinder on a plane, by force per length. Johnson (1985), eqs. 4.43 and 4.45.
 * @param forcePerLength N/m, above 0
 * @param radius         m, above 0
 * @param modulus        E*, Pa, above 0
 */
export function hertzCylinder(
  forcePerLength: number,
  radius: number,
  modulus: number,
): { readonly halfWidth: number; readonly peakPressure: number } {
  const halfWidth = Math.sqrt((4 * forcePerLength * radius) / (Math.PI * modulus));
  return { halfWidth, peakPressure: (2 * forcePerLength) / (Math.PI * halfWidth) };
}

/**
 * How far the surface under the middle of a Hertz line contact sinks against a point at a depth, m.
 * Johnson (1985), eq. 5.57.
 * @param depth m, well above the half width
 */
export function lineCompression(
  forcePerLength: number,
  halfWidth: number,
  depth: number,
  { modulus, poissonRatio }: { readonly modulus: number; readonly poissonRatio: number },
): number {
  const factor = 2 * Math.log((2 * depth) / halfWidth) - poissonRatio / (1 - poissonRatio);
  return (forcePerLength / (Math.PI * modulus)) * factor;
}
