import type { FlowCondition } from "../condition";
import { TRUST_NUMBERS } from "../constants/trustNumbers";
import type { SectionNodes } from "../geometry/sectionNodes";
import type { Regime } from "../solution";
import type { SectionDescription } from "./sectionDescription";

/** Where an answer of the engine lies among those that its errors are known at. */
export interface ErrorPoint {
  readonly regime: Regime;
  /** What kind of shape it is, see SectionDescription. */
  readonly shape: SectionDescription["shape"];
  readonly logReynolds: number;
  /** log10 of ks / D, a polished wall's where it is smoother. */
  readonly logRoughness: number;
  /** ln(1 + Tu / that of a quiet stream). */
  readonly turbulence: number;
  readonly logLengthToHeight: number;
  /** Smallest radius of curvature of the contour over the height, at most a half. */
  readonly cornerRadiusToHeight: number;
}

/** What of an error point belongs to the section alone. */
export type SectionPoint = Pick<ErrorPoint, "shape" | "logLengthToHeight" | "cornerRadiusToHeight">;

const POLISHED_ROUGHNESS = TRUST_NUMBERS.polishedRoughness.value;
const TURBULENCE_SCALE = TRUST_NUMBERS.turbulenceScale.value;
const ROUNDEST_CORNER = 0.5;

export function sectionPoint(
  { shape, lengthToHeight }: SectionDescription,
  nodes: SectionNodes,
  height: number,
): SectionPoint {
  let sharpest = 0;
  for (let i = 0; i < nodes.count; i++) sharpest = Math.max(sharpest, nodes.curvature[i]);
  return {
    shape,
    logLengthToHeight: Math.log(lengthToHeight),
    cornerRadiusToHeight: Math.min(ROUNDEST_CORNER, 1 / (sharpest * height)),
  };
}

export function errorPoint(section: SectionPoint, condition: FlowCondition, regime: Regime): ErrorPoint {
  return {
    ...section,
    regime,
    logReynolds: Math.log(condition.reynolds),
    logRoughness: Math.log10(Math.max(condition.sandGrainRoughnessRatio, POLISHED_ROUGHNESS)),
    turbulence: Math.log1p(condition.turbulenceIntensity / TURBULENCE_SCALE),
  };
}
