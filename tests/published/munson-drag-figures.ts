import { type CommonPart, type PublishedSource, published } from "./publishedValue";
import { rectangle, sectionStream } from "./streams";

const squareCorners: readonly (readonly [number, number])[] = [
  [0, 2.2],
  [0.02, 2.0],
  [0.17, 1.2],
  [0.33, 1.0],
];

const rectangles: readonly (readonly [number, number])[] = [
  [0.1, 1.9],
  [0.5, 2.5],
  [0.65, 2.9],
  [1.0, 2.2],
  [2.0, 1.6],
  [3.0, 1.3],
];

const axial: readonly (readonly [number, number])[] = [
  [0.5, 1.1],
  [1, 0.93],
  [2, 0.83],
  [4, 0.85],
];

const read: CommonPart = {
  group: "rectangles over length/height",
  scatter: { relative: 0.1 },
  grade: "A",
  howObtained: "public copy",
};

export const munsonDragFigures: PublishedSource = {
  name: "Munson et al., figures 9.19 and 9.20",
  nature: "handbook",
  experiment: "NACA TN 3038",
  citation:
    "B. R. Munson, D. F. Young, T. H. Okiishi and W. W. Huebsch (2009), Fundamentals of Fluid Mechanics, 6th ed., figures 9.19 and 9.20",
  remark: "Textbook summary, Re 1e5; the rounded squares trace to NACA TN 3038.",
  values: [
    ...rectangles.map(([lengthToHeight, value]) =>
      published(read, { kind: "dragCoefficient", ...sectionStream(rectangle(lengthToHeight)), reynolds: 1e5 }, value),
    ),
    ...squareCorners.map(([ratio, value]) =>
      published(
        { ...read, group: "rounded rectangles over corner radius", grade: ratio > 0.02 ? "B" : "A" },
        { kind: "dragCoefficient", ...sectionStream(rectangle(1, ratio)), reynolds: 1e5 },
        value,
      ),
    ),
    ...axial.map(([lengthToDiameter, value]) =>
      published(
        { ...read, group: "short and axial cylinders", scatter: { absolute: 0.05 } },
        { kind: "axialCylinderDrag", lengthToDiameter, reynolds: 1e5 },
        value,
      ),
    ),
    published(
      { ...read, group: "short and axial cylinders", grade: "B", scatter: { relative: 0.08 } },
      { kind: "axialCylinderDrag", lengthToDiameter: 0, reynolds: 1e5 },
      1.1,
      "disc",
    ),
  ],
};
