import type { Contour } from "../../engine/geometry/contour";

/** Where a tap is: an angle at the centroid from the front, or a point in the section's axes from its centroid. */
export type TapPlace =
  | {
      readonly kind: "angle";
      /** rad: 0 to the front, positive on the upper side, -pi to 2 pi. */
      readonly angle: number;
    }
  | { readonly kind: "point"; readonly x: number; readonly y: number };

/** Points among which the nearest is looked for first. */
const scanned = 2000;
const refinements = 50;

/** Arc length of a tap from the nose, counter-clockwise, m, in [0, perimeter). */
export function contourPosition(contour: Contour, place: TapPlace): number {
  const [centreX, centreY] = contour.centroid;
  // Upper side positive, but the walk from the nose takes the lower side first.
  const distance =
    place.kind === "angle"
      ? (arc: number) => {
          const { x, y } = contour.at(arc);
          const own = Math.atan2(y - centreY, -(x - centreX));
          return 1 - Math.cos(own - place.angle);
        }
      : (arc: number) => {
          const { x, y } = contour.at(arc);
          return Math.hypot(x - centreX - place.x, y - centreY - place.y);
        };
  const step = contour.perimeter / scanned;
  let best = 0;
  for (let i = 1; i < scanned; i++) if (distance(i * step) < distance(best * step)) best = i;
  let low = (best - 1) * step;
  let high = (best + 1) * step;
  for (let i = 0; i < refinements; i++) {
    const third = (high - low) / 3;
    if (distance(low + third) <= distance(high - third)) high -= third;
    else low += third;
  }
  const arc = (low + high) / 2;
  return arc - contour.perimeter * Math.floor(arc / contour.perimeter);
}
