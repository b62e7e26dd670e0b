import { type CommonPart, type PublishedSource, published } from "./publishedValue";

/** The only outside brackets of a body far shorter than its diameter, moving along its plane. */
const bracket: CommonPart = {
  group: "wheels and thin discs",
  scatter: { relative: 0.3 },
  grade: "C",
  howObtained: "public copy",
};

export const raymerLandingGear: PublishedSource = {
  name: "Raymer, landing-gear table",
  nature: "handbook",
  citation: "D. P. Raymer (1989), Aircraft Design: A Conceptual Approach, table of landing-gear drag",
  remark:
    "Full scale. Width/diameter of aircraft tyres 0.25 to 0.4 (from memory) and Re 7e5 to 2.5e6 (estimated from size and speed) are taken at their middles; the scatter is an estimate.",
  values: [
    published(
      bracket,
      { kind: "edgeOnDiscDrag", thicknessToDiameter: 0.32, reynolds: 1.3e6 },
      0.25,
      "regular wheel and tyre, on width times diameter",
    ),
  ],
};

export const pottsCrowther2002: PublishedSource = {
  name: "Potts and Crowther 2002",
  nature: "measurement",
  citation:
    "J. R. Potts and W. J. Crowther (2002), Frisbee aerodynamics, AIAA paper 2002-3150; drag at the angle of least drag and at zero as quoted in many program sources",
  remark:
    "0.08 to 0.093 on the planform area; thickness/diameter 0.14 (from memory) and Re 3e5 (estimated) carry them over to 0.45 and 0.52 on thickness times diameter. A cambered disc. Values fitted to filmed flights are twice as high.",
  values: [
    published(
      { ...bracket, scatter: { relative: 0.15 } },
      { kind: "edgeOnDiscDrag", thicknessToDiameter: 0.14, reynolds: 3e5 },
      0.485,
      "from 0.45 at the angle of least drag to 0.52 at zero",
    ),
  ],
};
