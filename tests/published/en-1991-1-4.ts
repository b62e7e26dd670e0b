import { type CommonPart, type PublishedSource, published } from "./publishedValue";
import { rectangle, roughStream, sectionStream } from "./streams";

/**
 * Drag of an infinitely long circular cylinder over Reynolds number and equivalent roughness, figure 7.28.
 * @param reynolds above 1e5
 * @param roughnessRatio k / b, 1e-5 to 1e-2
 */
export function codeCylinderDrag(reynolds: number, roughnessRatio: number): number {
  const millions = reynolds / 1e6;
  const falling = Math.min(Math.max(0.11 / millions ** 1.4, 0.4), 1.2);
  return Math.max(falling, 1.2 + (0.18 * Math.log10(10 * roughnessRatio)) / (1 + 0.4 * Math.log10(millions)));
}

/** Sharp rectangles, figure 7.23: length along the wind over width across it, drag coefficient. */
export const codeSharpRectangles: readonly (readonly [number, number])[] = [
  [0.2, 2.0],
  [0.6, 2.35],
  [0.7, 2.4],
  [1, 2.1],
  [2, 1.65],
  [5, 1.0],
  [10, 0.9],
];

/** Factor for rounded corners, figure 7.24: 1 when sharp, falling linearly to 0.5 at r / b = 0.2. */
export function codeCornerFactor(cornerRadiusRatio: number): number {
  return Math.max(0.5, 1 - 2.5 * cornerRadiusRatio);
}

const design: CommonPart = {
  group: "rough cylinder",
  scatter: { absolute: 0.1 },
  grade: "B",
  howObtained: "public copy",
};

export const en199114: PublishedSource = {
  name: "EN 1991-1-4",
  nature: "design code",
  citation: "EN 1991-1-4 (2005), Wind actions, section 7.6 to 7.9 and figures 7.23, 7.24, 7.28, 7.36",
  remark:
    "A design code: upper envelopes, not means. In the crisis its curve is a bound on purpose and is shown, never a gate.",
  values: [
    ...[1e-5, 1e-4, 1e-3, 1e-2].flatMap((ratio) =>
      [3e5, 5e5, 1e6, 3e6, 1e7].map((reynolds) =>
        published(
          {
            ...design,
            group: ratio > 1e-5 ? "rough cylinder" : "smooth cylinder",
            grade: reynolds < 1e6 ? "C" : "B",
          },
          { kind: "dragCoefficient", ...roughStream(ratio), reynolds },
          Number(codeCylinderDrag(reynolds, ratio).toPrecision(3)),
        ),
      ),
    ),
    ...codeSharpRectangles.map(([lengthToHeight, value]) =>
      published(
        { ...design, group: "rectangles over length/height", grade: "A", scatter: { relative: 0.1 } },
        { kind: "dragCoefficient", ...sectionStream(rectangle(lengthToHeight)), reynolds: 1e5 },
        value,
        "no Reynolds number in the code",
      ),
    ),
    ...[0.05, 0.1, 0.2].map((ratio) =>
      published(
        { ...design, group: "rounded rectangles over corner radius", scatter: { relative: 0.15 } },
        { kind: "dragCoefficient", ...sectionStream(rectangle(1, ratio)), reynolds: 1e5 },
        Number((2.1 * codeCornerFactor(ratio)).toPrecision(3)),
        "no Reynolds number in the code",
      ),
    ),
    ...(
      [
        [1, 0.6],
        [10, 0.698],
        [70, 0.918],
      ] as const
    ).map(([lengthToDiameter, value]) =>
      published(
        {
          ...design,
          group: "short and axial cylinders",
          scatter: { relative: 0.1 },
          shownOnly: "the engine's end relief is a mean of tables, this one among them",
        },
        { kind: "crossFlowLengthFactor", lengthToDiameter, reynolds: 1e5 },
        value,
        "end-effect factor of a solid body",
      ),
    ),
  ],
};
