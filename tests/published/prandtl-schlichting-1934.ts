import { type PublishedSource, published } from "./publishedValue";

/** Fully rough plate: x / ks, local Cf = (2.87 + 1.58 log10 x/ks)^-2.5 and mean CF = (1.89 + 1.62 log10 x/ks)^-2.5. */
export const roughPlate: readonly {
  readonly lengthToRoughness: number;
  readonly localFriction: number;
  readonly meanFriction: number;
}[] = [
  { lengthToRoughness: 100, localFriction: 0.0112, meanFriction: 0.01678 },
  { lengthToRoughness: 1e3, localFriction: 0.00626, meanFriction: 0.00845 },
  { lengthToRoughness: 1e4, localFriction: 0.00391, meanFriction: 0.00493 },
  { lengthToRoughness: 1e5, localFriction: 0.00263, meanFriction: 0.00317 },
];

export const prandtlSchlichting1934: PublishedSource = {
  name: "Prandtl and Schlichting 1934",
  nature: "theory",
  citation:
    "L. Prandtl and H. Schlichting (1934), Das Widerstandsgesetz rauher Platten, Werft Reederei Hafen 15, 1-4; formulae as in Schlichting, Boundary-Layer Theory, ch. 21",
  remark: "Interpolations of 1e2 < x/ks < 1e6; constants from memory, high confidence, values computed from them.",
  values: roughPlate.map(({ lengthToRoughness, localFriction }) =>
    published(
      {
        group: "boundary-layer flows",
        scatter: { relative: 0.05 },
        grade: "A",
        howObtained: "computed from the stated formula",
      },
      { kind: "roughPlateFriction", lengthToRoughness },
      localFriction,
    ),
  ),
};
