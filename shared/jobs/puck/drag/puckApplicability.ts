import { FREE_WAKE_GAP_RATIO } from "../../../engine/flow/quietWake";
import type { CasePuck } from "../puckCase";
import type { PuckApplicability } from "../puckResult";
import { shortestMeasuredRatio } from "./endRelief";
import type { PuckFlow } from "./puckFlow";

/** How far a drag along the axis is backed by measurements. */
export function faceOnApplicability({ whole, faceOn }: Pick<PuckFlow, "whole" | "faceOn">): PuckApplicability {
  if (whole !== null) return wholeApplicability;
  return faceOn === null
    ? "published tables, no flow solved"
    : "solved flow along the axis, base pressure of discs and spheres";
}

/**
 * How far a drag along the mid-plane is backed by measurements.
 * @param gap to the floor, m; null in open water
 */
export function edgeOnApplicability(
  { spec }: Pick<CasePuck, "spec">,
  gap: number | null,
  { whole }: Pick<PuckFlow, "whole">,
): PuckApplicability {
  const { diameterMetres: d, thicknessMetres: t } = spec;
  if (gap !== null && gap / t < FREE_WAKE_GAP_RATIO) {
    return "extrapolated: near a floor, the wake taken as quiet, no measurement of such a body found";
  }
  if (whole !== null) return t / d < shortestMeasuredRatio ? shortWholeApplicability : wholeApplicability;
  return t / d < shortestMeasuredRatio
    ? "extrapolated: solved sections with end relief beyond its tables"
    : "solved sections with published end relief";
}

const wholeApplicability: PuckApplicability =
  "solved flow of the whole body, base pressure of spheres, discs and finite cylinders";
const shortWholeApplicability: PuckApplicability =
  "extrapolated: solved flow of the whole body, base pressure of longer cylinders";
