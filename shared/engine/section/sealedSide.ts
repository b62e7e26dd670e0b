import type { SideSolution } from "../solution";

/** True of the side on which a section lies on a floor: no water passes, so it has no layer and does not separate. */
export function isSealed({ layer }: SideSolution): boolean {
  return layer.arc.length === 0;
}
