import { LAYER_NUMBERS } from "../constants/layerNumbers";

const THICKNESS_RATIO = LAYER_NUMBERS.layerToMomentumThickness.value;

/** Thickness of a turbulent layer over its momentum thickness theta: 72/7, of the 1/7-power profile (Prandtl 1927). */
export function layerThickness(momentumThickness: number): number {
  return THICKNESS_RATIO * momentumThickness;
}

/**
 * How much sharper than the layer is thick a convex wall bends, (kappa delta)^4: 1 where the radius is the layer's
 * thickness. A layer cannot follow a wall that turns away within its own thickness, whatever the pressure at its edge:
 * it leaves at the corner. The friction at which it leaves rises by this over each thickness that it follows the bend. The
 * fourth power keeps that to corners; on a circle it is below 1 %.
 * @param curvature kappa of the wall * D, positive where convex
 * @param thickness delta / D
 */
export function cornerSharpness(curvature: number, thickness: number): number {
  if (!(curvature > 0)) return 0;
  const ratio = curvature * thickness;
  return ratio * ratio * ratio * ratio;
}

/**
 * Thickness of a layer a step further on. It grows with the momentum thickness, but does not shrink with it within its
 * own thickness: a burst of speed around a corner that is sharper than that does not reach through it.
 * @param before delta / D at the start of the step
 * @param now thickness that belongs to theta at the end of the step
 */
export function laggedThickness(before: number, now: number, step: number): number {
  return now >= before ? now : now + (before - now) * Math.exp(-step / before);
}

/** What corners do to a layer that is followed along a wall. */
export class CornerHold {
  /** delta / D, lagged. */
  thickness: number;
  /** Sum of the sharpness over each thickness that the layer has followed. */
  bending = 0;

  /** @param momentumThickness theta / D where the layer starts */
  constructor(momentumThickness: number) {
    this.thickness = layerThickness(momentumThickness);
  }

  /** One step on: theta / D and the curvature of the wall * D at its end, its length / D. */
  follow(momentumThickness: number, bend: number, step: number): void {
    this.thickness = laggedThickness(this.thickness, layerThickness(momentumThickness), step);
    this.bending += (cornerSharpness(bend, this.thickness) * step) / this.thickness;
  }
}
