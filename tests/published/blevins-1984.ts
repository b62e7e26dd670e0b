import { type PublishedSource, published } from "./publishedValue";
import { rectangle, sectionStream } from "./streams";

/** Length over height, corner radius over height, drag. */
const roundedRectangles: readonly (readonly [number, number, number])[] = [
  [0.5, 0, 2.5],
  [0.5, 0.021, 2.2],
  [0.5, 0.083, 1.9],
  [0.5, 0.25, 1.6],
  [1, 0, 2.2],
  [1, 0.021, 2.0],
  [1, 0.167, 1.2],
  [1, 0.333, 1.0],
  [2, 0, 1.6],
  [2, 0.042, 1.4],
  [2, 0.167, 0.7],
  [2, 0.5, 0.4],
];

export const blevins1984: PublishedSource = {
  name: "Blevins 1984",
  nature: "handbook",
  experiment: "NACA TN 3038",
  citation: "R. D. Blevins (1984), Applied Fluid Dynamics Handbook, table of rectangular sections with rounded corners",
  remark: "Subcritical level at Re 1e5, traced to NACA TN 3038; its square row agrees with a textbook copy.",
  values: roundedRectangles.map(([lengthToHeight, ratio, value]) =>
    published(
      {
        group: "rounded rectangles over corner radius",
        scatter: { relative: 0.12 },
        grade: "B",
        howObtained: "from memory, medium confidence",
      },
      { kind: "dragCoefficient", ...sectionStream(rectangle(lengthToHeight, ratio)), reynolds: 1e5 },
      value,
    ),
  ),
};
