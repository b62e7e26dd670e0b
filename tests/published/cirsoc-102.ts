import { type CommonPart, type Group, type PublishedSource, published, type Scatter } from "./publishedValue";
import type { PublishedSection } from "./quantity";
import { rectangle, sectionStream } from "./streams";

/** Section, drag in the columns "V b < 4 m2/s" (Re below 2.7e5) and "V b > 10 m2/s" (Re above 6.7e5), remark. */
type RoundedRow = readonly [group: Group, section: PublishedSection, low: number, high: number, remark?: string];

const rounded = "rounded rectangles over corner radius";
const triangles = "triangles and polygons";
const inferred = "which way it points is inferred from the sharp table; taken as equilateral";

const triangle = (pointing: "apex upstream" | "face upstream", cornerRadiusToHeight: number): PublishedSection => ({
  shape: "triangle",
  pointing,
  cornerRadiusToHeight,
});
const diagonal = (cornerRadiusToSide: number): PublishedSection => ({ shape: "diagonal square", cornerRadiusToSide });

/** Table I.1; derived from the tunnel tests of NACA TN 3038, rounded to 0.1 and lifted. */
const roundedSections: readonly RoundedRow[] = [
  ["smooth cylinder", { shape: "circle" }, 1.2, 0.6],
  [rounded, rectangle(1, 0.333), 1.2, 0.6],
  [rounded, rectangle(1, 0.167), 1.3, 0.7, "printed as 1/16, almost certainly 1/6"],
  [rounded, rectangle(2, 0.167), 0.7, 0.7],
  [rounded, rectangle(0.5, 0.083), 1.9, 1.9],
  [triangles, diagonal(1 / 3), 1.2, 0.5],
  [triangles, diagonal(1 / 12), 1.6, 1.6],
  ["ellipses", { shape: "ellipse", lengthToHeight: 2 }, 0.7, 0.3],
  ["ellipses", { shape: "ellipse", lengthToHeight: 0.5 }, 1.7, 1.5],
  [triangles, triangle("apex upstream", 1 / 12), 1.4, 1.4, inferred],
  [triangles, triangle("apex upstream", 1 / 48), 1.3, 1.3, inferred],
  [triangles, triangle("face upstream", 1 / 48), 2.1, 2.1, inferred],
  [triangles, triangle("face upstream", 1 / 12), 2.1, 2.1, inferred],
];

/** Table I.2, sharp. */
const sharpSections: readonly (readonly [Group, PublishedSection, number])[] = [
  ["rectangles over length/height", rectangle(1), 2.2],
  [triangles, diagonal(0), 1.5],
  [triangles, triangle("face upstream", 0), 2.0],
  [triangles, triangle("apex upstream", 0), 1.2],
  [triangles, { shape: "dodecagon" }, 1.3],
];

const design: CommonPart = {
  group: rounded,
  scatter: { relative: 0.15 },
  grade: "B",
  howObtained: "public copy",
};
/** A design value past the crisis is an upper bound: the circle's 0.6 was measured as 0.25 to 0.48. */
const upperBound: Scatter = { relativeBelow: 0.6, relativeAbove: 0.05 };

export const cirsoc102: PublishedSource = {
  name: "CIRSOC 102",
  nature: "design code",
  experiment: "NACA TN 3038",
  citation: "CIRSOC 102 (2025), annex I, tables I.1, I.2 and I.6",
  remark:
    "A design code; its rounded sections go back to NACA TN 3038. Where both columns agree, the tests found no crisis up to about Re 7e5; else the high column is an upper bound.",
  values: [
    ...roundedSections.flatMap(([group, section, low, high, remark]) => {
      const common: CommonPart = { ...design, group, grade: remark === undefined ? "B" : "C" };
      const stream = sectionStream(section);
      return [
        published(common, { kind: "dragCoefficient", ...stream, reynolds: 1e5 }, low, remark),
        published(
          low === high ? common : { ...common, grade: "C", scatter: upperBound },
          { kind: "dragCoefficient", ...stream, reynolds: 7e5 },
          high,
          low === high ? remark : "an upper bound",
        ),
      ];
    }),
    ...sharpSections.map(([group, section, value]) =>
      published(
        { ...design, group, scatter: { relative: 0.1 } },
        { kind: "dragCoefficient", ...sectionStream(section), reynolds: 1e5 },
        value,
        "no Reynolds number in the code",
      ),
    ),
    ...(
      [
        [8, 0.7],
        [14, 0.8],
        [40, 1.0],
      ] as const
    ).map(([lengthToDiameter, value]) =>
      published(
        { ...design, group: "short and axial cylinders", scatter: { relative: 0.1 } },
        { kind: "crossFlowLengthFactor", lengthToDiameter, reynolds: 1e5 },
        value,
      ),
    ),
  ],
};
