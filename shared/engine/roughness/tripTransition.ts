import { LAYER_NUMBERS } from "../constants/layerNumbers";

const FIRING_REYNOLDS = LAYER_NUMBERS.tripReynolds.value;

/**
 * Whether a single two-dimensional element (wire, step, ridge) turns the laminar layer at its place.
 * A wire fires at once when Ue h / nu exceeds 826 (Gibbings 1959, ARC CP 462, from memory).
 * @param reynoldsHeight Ue h / nu on the edge speed at the element
 */
export function tripFires(reynoldsHeight: number): boolean {
  return reynoldsHeight > FIRING_REYNOLDS;
}
