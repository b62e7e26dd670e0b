/** A section in a tunnel with solid walls above and below it, as the tunnel shows it. */
export interface ConfinedDrag {
  /** On the speed of the empty tunnel. */
  readonly dragCoefficient: number;
  /** Speed that the section meets / speed of the empty tunnel. */
  readonly speedRatio: number;
}

/** Ratio of model width to tunnel height beyond which the correction is not used. */
export const largestBlockageRatio = 0.25;

/** Solid blockage of a circle / (d/h)^2 in speed and in drag. Source: Allen & Vincenti (1944), NACA TR 782. */
const speedTerm = 0.82;
const dragTerm = 2.5;

/**
 * What a section with a known drag in an unbounded stream shows between the walls of a closed tunnel: the inverse of the
 * correction Cd_free / Cd = 1 - Cd b / 2 - 2.5 s, speed ratio = 1 + Cd b / 4 + 0.82 s, with b = width / tunnel height and
 * s = b^2 for a circle. Source: Allen & Vincenti (1944), NACA TR 782. For other sections s is taken in proportion to the
 * doublet of the ellipse of their length and width, s = b^2 (1 + length / width) / 2 (own extension, exact for the circle).
 * @param freeDrag      drag coefficient in an unbounded stream, on the width
 * @param blockageRatio b, 0 to largestBlockageRatio
 * @param lengthToWidth extent along the stream / width
 * @returns null where no drag between walls belongs to it: the blockage is too large for the method
 */
export function confinedDrag(freeDrag: number, blockageRatio: number, lengthToWidth: number): ConfinedDrag | null {
  if (!(blockageRatio >= 0 && blockageRatio <= largestBlockageRatio)) {
    throw new RangeError(`blockage ratio is ${blockageRatio}; it must be from 0 to ${largestBlockageRatio}.`);
  }
  if (blockageRatio === 0) return { dragCoefficient: freeDrag, speedRatio: 1 };
  const solid = (blockageRatio ** 2 * (1 + lengthToWidth)) / 2;
  // Cd (B - Cd b / 2) = Cd_free, the root that goes to Cd_free without walls.
  const linear = 1 - dragTerm * solid;
  const discriminant = linear ** 2 - 2 * blockageRatio * freeDrag;
  if (!(linear > 0 && discriminant >= 0)) return null;
  const dragCoefficient = (linear - Math.sqrt(discriminant)) / blockageRatio;
  return { dragCoefficient, speedRatio: 1 + (dragCoefficient * blockageRatio) / 4 + speedTerm * solid };
}
