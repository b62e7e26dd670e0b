import type { Contour } from "./contour";

const places = 128;

/**
 * Compares a contour with its mirror image in the x axis through its centroid at equally spaced arcs.
 * @param tolerance largest difference that counts as none, as a part of the perimeter
 */
export function isMirrorSymmetric({ perimeter, centroid, at }: Contour, tolerance: number): boolean {
  for (let i = 0; i <= places / 2; i++) {
    const lower = at((perimeter * i) / places);
    const upper = at(perimeter - (perimeter * i) / places);
    const difference = Math.hypot(lower.x - upper.x, lower.y + upper.y - 2 * centroid[1]);
    if (!(difference <= tolerance * perimeter)) return false;
  }
  return true;
}
