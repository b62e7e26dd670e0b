/**
 * Sliding wear by Archard's law: the volume worn off is in proportion to load and distance, whatever the area is.
 * Sources: Archard (1953), J. Appl. Phys. 24, 981-988; Hutchings & Shipway, Tribology, 2nd ed. (2017), ch. 5.
 */

/** Wear coefficient k, m^3/(N m), from the dimensionless K and the hardness of the softer body, Pa. */
export function specificWear(coefficient: number, hardness: number): number {
  return coefficient / hardness;
}

/** m^3. @param k m^3/(N m) @param load N @param distance m */
export function wornVolume(k: number, load: number, distance: number): number {
  return k * load * distance;
}

/** Thickness off a flat area that stays flat, m: k times pressure times distance. @param area m^2 */
export function wornDepth(k: number, load: number, distance: number, area: number): number {
  return wornVolume(k, load, distance) / area;
}
