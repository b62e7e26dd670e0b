/** What a set's drag coefficients are on: width across the stream x span, or length along the stream x span. */
export const referenceAreas = ["frontal", "plan"] as const;
export type ReferenceArea = (typeof referenceAreas)[number];

/** What a set's Reynolds numbers are on: the extent across the stream, or the one along it. */
export const referenceLengths = ["acrossStream", "alongStream"] as const;
export type ReferenceLength = (typeof referenceLengths)[number];

export const referenceAreaWords: Readonly<Record<ReferenceArea, string>> = {
  frontal: "width across the stream x span",
  plan: "length along the stream x span",
};

export const referenceLengthWords: Readonly<Record<ReferenceLength, string>> = {
  acrossStream: "extent across the stream",
  alongStream: "extent along the stream",
};

/**
 * Factors that put Reynolds numbers on the width and drag coefficients on width x span, where all else here has them.
 * @param lengthToWidth of the section, extent along the stream / across it
 */
export function referenceScale(
  area: ReferenceArea,
  length: ReferenceLength,
  lengthToWidth: number,
): { readonly reynolds: number; readonly drag: number } {
  return {
    reynolds: length === "alongStream" ? 1 / lengthToWidth : 1,
    drag: area === "plan" ? lengthToWidth : 1,
  };
}
