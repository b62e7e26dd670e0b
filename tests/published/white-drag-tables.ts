import { type PublishedSource, published } from "./publishedValue";
import { rectangle, sectionStream } from "./streams";

/** Elliptical cylinders: length over height, drag with a laminar and with a turbulent layer. */
const ellipses: readonly (readonly [number, number, number])[] = [
  [2, 0.6, 0.2],
  [4, 0.35, 0.15],
];

/** Flat-nosed rectangular sections: length over height, drag. */
const flatNosed: readonly (readonly [number, number])[] = [
  [0.1, 1.9],
  [0.4, 2.3],
  [0.7, 2.7],
  [1.2, 2.1],
  [2.0, 1.8],
  [2.5, 1.4],
  [3.0, 1.3],
];

/** Semicircular nose, flat rear with sharp corners: length over height, drag. */
const roundNoses: readonly (readonly [number, number])[] = [
  [0.5, 1.16],
  [1, 0.9],
  [2, 0.7],
  [4, 0.68],
  [6, 0.64],
];

const crossFlow: readonly (readonly [number, number])[] = [
  [1, 0.64],
  [2, 0.68],
  [3, 0.72],
  [5, 0.74],
  [10, 0.82],
  [20, 0.91],
  [40, 0.98],
];

const axial: readonly (readonly [number, number])[] = [
  [0.5, 1.15],
  [1, 0.9],
  [2, 0.85],
  [4, 0.87],
  [8, 0.99],
];

export const whiteDragTables: PublishedSource = {
  name: "White, tables 7.2 and 7.3",
  nature: "handbook",
  citation:
    "F. M. White (2011), Fluid Mechanics, 7th ed., tables 7.2 (two-dimensional) and 7.3 (three-dimensional bodies)",
  remark: "Textbook summary of older measurements, Re at least 1e4; no corner radius given.",
  values: [
    ...ellipses.flatMap(([lengthToHeight, laminar, turbulent]) => {
      const stream = sectionStream({ shape: "ellipse", lengthToHeight });
      const common = {
        group: "ellipses",
        scatter: { relative: 0.15 },
        grade: "B",
        howObtained: "from memory, high confidence",
      } as const;
      return [
        published(common, { kind: "dragCoefficient", ...stream, reynolds: 5e4 }, laminar, "laminar layer"),
        published(common, { kind: "dragCoefficient", ...stream, reynolds: 1e6 }, turbulent, "turbulent layer"),
      ];
    }),
    ...flatNosed.map(([lengthToHeight, value]) =>
      published(
        {
          group: "rectangles over length/height",
          scatter: { relative: 0.1 },
          grade: "B",
          howObtained: "from memory, medium confidence",
        },
        { kind: "dragCoefficient", ...sectionStream(rectangle(lengthToHeight)), reynolds: 1e5 },
        value,
      ),
    ),
    ...roundNoses.map(([lengthToHeight, value]) =>
      published(
        {
          group: "round noses with a flat rear",
          scatter: { relative: 0.1 },
          grade: "B",
          howObtained: "from memory, high confidence",
        },
        {
          kind: "dragCoefficient",
          ...sectionStream({ shape: "round nose, flat rear", lengthToHeight }),
          reynolds: 1e5,
        },
        value,
        "Re at least 1e4",
      ),
    ),
    ...crossFlow.map(([lengthToDiameter, value]) =>
      published(
        {
          group: "short and axial cylinders",
          scatter: { relative: 0.08 },
          grade: "A",
          howObtained: "from memory, high confidence",
          shownOnly: "the engine's end relief is a mean of tables, this one among them",
        },
        { kind: "crossFlowCylinderDrag", lengthToDiameter, reynolds: 1e5 },
        value,
      ),
    ),
    ...axial.map(([lengthToDiameter, value]) =>
      published(
        {
          group: "short and axial cylinders",
          scatter: { absolute: 0.05 },
          grade: "B",
          howObtained: "from memory, high confidence",
        },
        { kind: "axialCylinderDrag", lengthToDiameter, reynolds: 1e5 },
        value,
      ),
    ),
  ],
};
