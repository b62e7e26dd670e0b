import { caseVersion } from "../document/caseVersion";
import { patternToDocument } from "../document/patternDocument";
import { equivalentRoughness } from "../engine/pattern/equivalentRoughness";
import type { SurfacePattern } from "../engine/pattern/surfacePattern";
import { degreesOf, percentOf } from "../numerics/degreesAndPercent";
import type { CaseDocument } from "./caseDocument";
import type { Design } from "./design";
import { sectionToDocument } from "./sectionToDocument";

/**
 * A design as a case file with one condition, which the command line solves as the page does.
 * @param pattern that its roughness may stand for; written in place of it where it has just that roughness
 */
export function designToCase(design: Design, pattern: SurfacePattern | null = null): CaseDocument {
  return {
    wakewrightCase: caseVersion,
    title: design.title,
    sections: [{ ...sectionToDocument(design.section, design.sectionName), ...floorKeys(design) }],
    panelCount: design.panelCount,
    incidenceDegrees: tidy(degreesOf(design.incidence)),
    fluid: design.fluid,
    speedsMetresPerSecond: [design.speed],
    ...wallKeys(design, pattern),
    turbulencePercents: [tidy(percentOf(design.turbulenceIntensity))],
    ...(design.layerMethod === undefined ? {} : { layerMethod: design.layerMethod }),
    ...(design.trips.length > 0
      ? {
          trips: design.trips.map(({ side, arc, height }) => ({ side, arcMetres: arc, heightMetres: height })),
        }
      : {}),
  };
}

function wallKeys({ sandGrainRoughness }: Design, pattern: SurfacePattern | null) {
  const estimate = pattern === null ? null : equivalentRoughness(pattern);
  return pattern !== null && estimate?.ok && estimate.value.sandGrainRoughness === sandGrainRoughness
    ? { surfacePattern: patternToDocument(pattern) }
    : { sandGrainRoughnessMetres: [sandGrainRoughness] };
}

/** The floor as a key of its section. */
export function floorKeys({ floorGap }: Pick<Design, "floorGap">): { readonly floorGapMetres?: number } {
  return floorGap === null ? {} : { floorGapMetres: floorGap };
}

/** Without the last digits' noise of a conversion: 0.1 instead of 0.10000000000000002. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
