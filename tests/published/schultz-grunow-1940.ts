import { type PublishedSource, published } from "./publishedValue";

/** Local friction of a smooth plate: Re_x and Cf. */
export const schultzGrunowPlate: readonly (readonly [number, number])[] = [
  [1.652e6, 0.0033],
  [1.742e6, 0.00327],
  [2.009e6, 0.00316],
  [2.257e6, 0.00312],
  [2.421e6, 0.00308],
  [3.26e6, 0.00289],
  [3.625e6, 0.00289],
  [3.759e6, 0.00286],
  [3.889e6, 0.00286],
  [3.927e6, 0.0028],
  [4.465e6, 0.00274],
  [4.989e6, 0.00271],
  [5.404e6, 0.0027],
  [5.954e6, 0.00261],
  [6.851e6, 0.00254],
  [7.675e6, 0.00252],
  [8.252e6, 0.00249],
  [8.371e6, 0.00252],
  [8.661e6, 0.00248],
  [8.83e6, 0.00248],
  [1.195e7, 0.00236],
  [1.285e7, 0.00233],
  [1.415e7, 0.00231],
  [1.54e7, 0.00225],
];

/** Schultz-Grunow's own fit to them, within 1.6 % of each: Cf = 0.370 (log10 Re_x)^-2.584. */
export function schultzGrunowFriction(reynoldsX: number): number {
  return 0.37 * Math.log10(reynoldsX) ** -2.584;
}

export const schultzGrunow1940: PublishedSource = {
  name: "Schultz-Grunow 1940",
  nature: "measurement",
  citation:
    "F. Schultz-Grunow (1940), Luftfahrtforschung 17, 239-246; NACA TM 986 (1941), New frictional resistance law for smooth plates; measured local friction from an open data set (A. Trettel, sheardata)",
  values: schultzGrunowPlate.map(([reynoldsX, value]) =>
    published(
      { group: "boundary-layer flows", scatter: { relative: 0.03 }, grade: "A", howObtained: "public copy" },
      { kind: "smoothPlateFriction", reynoldsX },
      value,
    ),
  ),
};
