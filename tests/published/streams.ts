import type { PublishedSection, PublishedStream } from "./quantity";

/** ks / D of a polished surface: the floor of the roughness curve of EN 1991-1-4, used for every "smooth" body. */
export const polishedRoughness = 1e-5;

/** Turbulence intensity of a good tunnel, used where a source gives none. */
export const quietTurbulence = 0.001;

const circle: PublishedSection = { shape: "circle" };

/** A polished circle in a stream of the given turbulence intensity (a fraction). */
export function smoothStream(turbulenceIntensity = quietTurbulence): PublishedStream {
  return { section: circle, sandGrainRoughnessRatio: polishedRoughness, turbulenceIntensity };
}

/** A circle of the given ks / D. */
export function roughStream(sandGrainRoughnessRatio: number, turbulenceIntensity = quietTurbulence): PublishedStream {
  return { section: circle, sandGrainRoughnessRatio, turbulenceIntensity };
}

/** A polished section other than the circle. */
export function sectionStream(section: PublishedSection, turbulenceIntensity = quietTurbulence): PublishedStream {
  return { section, sandGrainRoughnessRatio: polishedRoughness, turbulenceIntensity };
}

/** Rectangle of the given length along the stream over height, and corner radius over height (0 is sharp). */
export function rectangle(lengthToHeight: number, cornerRadiusToHeight = 0): PublishedSection {
  return { shape: "rectangle", lengthToHeight, cornerRadiusToHeight };
}
