import { LAYER_NUMBERS } from "../constants/layerNumbers";

const ROBERTS_REYNOLDS = LAYER_NUMBERS.shearLayerReynolds.value;
const ROBERTS_TURBULENCE = LAYER_NUMBERS.shearLayerTurbulence.value;
/** Turbulence intensity below which a separated layer no longer notices the stream, about where the correlation meets Horton's 4e4 to 5e4. */
const QUIET_STREAM = LAYER_NUMBERS.quietStream.value;

/**
 * Length of the laminar part of a separated shear layer as a Reynolds number, q U l1 / nu = 2.5e4 log10 coth(17.32 Tu).
 * Source: Roberts (1980), AIAA J. 18, 25-31 (constants from memory). The formula grows without limit in a quiet stream,
 * where Horton (1968) has 4e4 to 5e4, so Tu is held at 0.1 % from below, which gives 4.4e4.
 * @param turbulenceIntensity velocity fluctuation / edge speed at separation, a fraction
 */
export function shearLayerTransitionReynolds(turbulenceIntensity: number): number {
  const argument = ROBERTS_TURBULENCE * Math.max(QUIET_STREAM, turbulenceIntensity);
  return ROBERTS_REYNOLDS * Math.log10(1 / Math.tanh(argument));
}

/** Curvature * D of the outer stream around a separated body, that of a circle of diameter D. */
const STREAM_CURVATURE = LAYER_NUMBERS.streamCurvature.value;

/**
 * Where a shear layer that left the wall comes back to it. The gap beneath it opens as l^2 / 2 times the wall's own
 * curvature plus 2/D, the curvature with which the outer stream turns around a body of width D; after transition the
 * layer spreads as a wedge, and reattaches where the wedge meets the wall. With R = 1/(curvature + 2/D) that is at l = slope R - sqrt((slope R)^2 - 2 slope R l1), and only if l1 is at most slope R / 2.
 *
 * Taking the true gap over the wall instead lets the layer come back to the flat side behind every rounded corner, and
 * puts the drag crisis of rounded squares and slender ellipses a factor of two too low.
 * @param laminarLength l1, length of the laminar shear layer / D
 * @param curvature of the wall at separation * D, positive where convex; a concave wall counts as flat
 * @param slope calibrated slope of the wedge
 * @returns arc length from separation to reattachment / D; null when the layer never comes back
 */
export function reattachmentDistance(laminarLength: number, curvature: number, slope: number): number | null {
  const reach = slope / (Math.max(0, curvature) + STREAM_CURVATURE);
  if (!(laminarLength <= reach / 2)) return null;
  return reach - Math.sqrt(reach * reach - 2 * reach * laminarLength);
}
