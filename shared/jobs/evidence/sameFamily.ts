import { quietStreamTurbulence, smoothWallRoughness } from "../../engine/trust/bandTable";
import type { SectionDescription } from "../../engine/trust/sectionDescription";
import type { FlowSettings } from "./flowSettings";

/** A design in a stream, as far as it decides whether what was measured on another holds for it. */
export interface FamilyMember {
  readonly description: SectionDescription;
  readonly settings: Pick<FlowSettings, "turbulenceIntensity" | "sandGrainRoughnessRatio">;
}

/** How far a design may be from the measured one (own choice: no published rule was found). */
const lengthFactor = 1.25;
const cornerDistance = 0.1;
const conditionFactor = 2;

/**
 * Why what was measured on one design does not hold for another, in one sentence; null where both are of one family: the
 * same kind of shape, length/height within a factor of 1.25, corner radius / height within 0.1, turbulence and roughness
 * within a factor of 2 (or both quiet, both smooth).
 */
export function notSameFamily(measured: FamilyMember, other: FamilyMember): string | null {
  const a = measured.description;
  const b = other.description;
  if (a.shape !== b.shape) return `It is ${article(b.shape)}; the measured design is ${article(a.shape)}.`;
  if (a.shape === "other") return "Sections that are no circle, ellipse or rectangle have no family to carry to.";
  if (a.nearFloor !== b.nearFloor) return "Only one of the two lies near a floor.";
  const lengths = b.lengthToHeight / a.lengthToHeight;
  if (!(lengths <= lengthFactor && lengths >= 1 / lengthFactor)) {
    return `Its length/height is ${text(b.lengthToHeight)}, the measured design's ${text(a.lengthToHeight)}: more than a factor of ${lengthFactor} apart.`;
  }
  if (Math.abs((a.cornerRadiusToHeight ?? 0) - (b.cornerRadiusToHeight ?? 0)) > cornerDistance) {
    return `Its corner radius/height is ${text(b.cornerRadiusToHeight ?? 0)}, the measured design's ${text(a.cornerRadiusToHeight ?? 0)}: more than ${cornerDistance} apart.`;
  }
  const { turbulenceIntensity: turbulence, sandGrainRoughnessRatio: roughness } = other.settings;
  if (!alike(measured.settings.turbulenceIntensity, turbulence, quietStreamTurbulence)) {
    return `Its turbulence is ${text(100 * turbulence)} %; it was measured at ${text(100 * measured.settings.turbulenceIntensity)} %.`;
  }
  if (!alike(measured.settings.sandGrainRoughnessRatio, roughness, smoothWallRoughness)) {
    return `Its ks/D is ${text(roughness)}; it was measured at ${text(measured.settings.sandGrainRoughnessRatio)}.`;
  }
  return null;
}

/** Within a factor of each other, or both below a value under which they make no difference. */
function alike(a: number, b: number, small: number): boolean {
  if (a <= small && b <= small) return true;
  return b <= conditionFactor * a && a <= conditionFactor * b;
}

function article(shape: SectionDescription["shape"]): string {
  return shape === "other" ? "a section of no named shape" : `${shape === "ellipse" ? "an" : "a"} ${shape}`;
}

function text(value: number): string {
  return String(Number(value.toPrecision(3)));
}
