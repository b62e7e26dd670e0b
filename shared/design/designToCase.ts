import type { CaseDocument } from "../case/caseDocument";
import { caseVersion } from "../case/caseVersion";
import type { Design } from "./design";
import { sectionToDocument } from "./sectionToDocument";

/** A design as a case file with one condition, which the command line solves as the page does. */
export function designToCase(design: Design): CaseDocument {
  return {
    wakewrightCase: caseVersion,
    title: design.title,
    sections: [{ ...sectionToDocument(design.section, design.sectionName), ...floorKeys(design) }],
    panelCount: design.panelCount,
    incidenceDegrees: tidy((design.incidence * 180) / Math.PI),
    fluid: design.fluid,
    speedsMetresPerSecond: [design.speed],
    sandGrainRoughnessMetres: [design.sandGrainRoughness],
    turbulencePercents: [tidy(design.turbulenceIntensity * 100)],
    ...(design.trips.length > 0
      ? {
          trips: design.trips.map(({ side, arc, height }) => ({ side, arcMetres: arc, heightMetres: height })),
        }
      : {}),
  };
}

/** The floor as a key of its section. */
export function floorKeys({ floorGap }: Pick<Design, "floorGap">): { readonly floorGapMetres?: number } {
  return floorGap === null ? {} : { floorGapMetres: floorGap };
}

/** Without the last digits' noise of a conversion: 0.1 instead of 0.10000000000000002. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
