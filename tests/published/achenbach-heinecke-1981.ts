import { type PublishedSource, published } from "./publishedValue";
import { roughStream, smoothStream } from "./streams";

/** Re and Cd of the smooth cylinder, open squares of Stabnikov and Garbaruk (2020), figure 3. */
const smoothDrag: readonly (readonly [number, number])[] = [
  [1.765e5, 1.174],
  [1.977e5, 1.057],
  [2.58e5, 0.906],
  [2.813e5, 0.614],
  [3.022e5, 0.591],
  [3.027e5, 0.497],
  [4.057e5, 0.498],
  [4.626e5, 0.506],
  [5.601e5, 0.533],
  [6.137e5, 0.518],
  [8.813e5, 0.593],
  [9.656e5, 0.585],
  [1.122e6, 0.632],
  [1.192e6, 0.64],
  [1.551e6, 0.625],
  [1.764e6, 0.723],
  [2.098e6, 0.672],
  [2.225e6, 0.738],
  [2.696e6, 0.719],
  [3.171e6, 0.716],
  [4.167e6, 0.673],
];

/** Middle of the 0.45 to 0.7 % of the tunnel (from memory, medium confidence). */
const smooth = smoothStream(0.006);
const read = {
  group: "smooth cylinder",
  grade: "B",
  howObtained: "public copy of a digitised figure",
} as const;

export const achenbachHeinecke1981: PublishedSource = {
  name: "Achenbach and Heinecke 1981",
  nature: "measurement",
  facility: {
    blockageRatio: 1 / 6,
    blockageCorrected: false,
    lengthToDiameter: null,
    howKnown: "from memory, medium confidence",
    remark: "turbulence 0.45 to 0.7 %",
  },
  citation:
    "E. Achenbach and E. Heinecke (1981), On vortex shedding from smooth and rough cylinders in the range of Reynolds numbers 6e3 to 5e6, J. Fluid Mech. 109, 239-251; drag of the smooth cylinder redrawn in Stabnikov and Garbaruk (2020), J. Phys. Conf. Ser. 1697, 012224, figure 3",
  remark: "Drag third hand, reading within 0.02. No floor of 0.22 but one of 0.5: blockage.",
  values: [
    ...smoothDrag.map(([reynolds, value]) =>
      published(
        { ...read, scatter: { absolute: reynolds > 2.5e5 && reynolds < 3.1e5 ? 0.06 : 0.03 } },
        { kind: "dragCoefficient", ...smooth, reynolds },
        value,
      ),
    ),
    published(
      { ...read, scatter: { relative: 0.05 } },
      { kind: "reynoldsAtDrag", ...smooth, dragCoefficient: 0.7, reynoldsFrom: 1e5, reynoldsTo: 1e6 },
      2.74e5,
    ),
    ...[7.5e-4, 3e-3, 9e-3].map((ratio) =>
      published(
        {
          group: "rough cylinder",
          scatter: { absolute: 0.02 },
          grade: "C",
          howObtained: "from memory, medium confidence",
        },
        { kind: "meanStrouhal", ...roughStream(ratio), reynoldsFrom: 1e6, reynoldsTo: 5e6 },
        0.25,
        "one level for all rough cylinders",
      ),
    ),
  ],
};
