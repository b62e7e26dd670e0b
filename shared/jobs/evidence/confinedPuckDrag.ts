import { maskellFactor } from "../tunnel/public";
import type { ConfinedDrag } from "./confinedDrag";

/**
 * What a body with free ends and a known drag in an unbounded stream shows in a closed tunnel: the inverse of the
 * correction Cd = Cd_t / (1 + eps Cd_t b), q / q_t = 1 + eps Cd_t b, so Cd_t = Cd / (1 - eps b Cd).
 * Source: Maskell (1963), ARC R&M 3400.
 * @param freeDrag      drag coefficient in an unbounded stream, on the area that b is made with
 * @param blockageRatio b, that area / area of the test section, 0 or more
 * @returns null where no drag between walls belongs to it: the blockage is too large for the method
 */
export function confinedPuckDrag(freeDrag: number, blockageRatio: number): ConfinedDrag | null {
  const left = 1 - maskellFactor.finite * blockageRatio * freeDrag;
  return left > 0 ? { dragCoefficient: freeDrag / left, speedRatio: Math.sqrt(1 / left) } : null;
}
