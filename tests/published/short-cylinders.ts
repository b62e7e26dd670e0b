import { type CommonPart, type PublishedSource, published } from "./publishedValue";

const group = "short and axial cylinders";

const dataBookCommon: CommonPart = { group, scatter: { relative: 0.08 }, grade: "A", howObtained: "public copy" };

export const dataBook2002: PublishedSource = {
  name: "Data book, figure 5.13b",
  nature: "handbook",
  citation: "C. Matthews (2002), Aeronautical Engineer's Data Book, figure 5.13(b), p. 95",
  remark: "Subcritical; both ends free.",
  values: [
    ...(
      [
        [1, 0.63],
        [2, 0.68],
        [5, 0.74],
        [10, 0.82],
        [40, 0.98],
      ] as const
    ).map(([lengthToDiameter, value]) =>
      published(dataBookCommon, { kind: "crossFlowCylinderDrag", lengthToDiameter, reynolds: 1e5 }, value),
    ),
    ...(
      [
        [1, 0.91],
        [2, 0.85],
        [4, 0.87],
        [7, 0.99],
      ] as const
    ).map(([lengthToDiameter, value]) =>
      published(
        { ...dataBookCommon, scatter: { absolute: 0.05 } },
        { kind: "axialCylinderDrag", lengthToDiameter, reynolds: 1e5 },
        value,
      ),
    ),
  ],
};

const axial: readonly (readonly [number, number])[] = [
  [0, 1.17],
  [0.0957, 1.17],
  [0.192, 1.16],
  [0.357, 1.13],
  [0.432, 1.12],
  [0.595, 1.07],
  [0.747, 1.02],
  [0.882, 0.971],
  [1.06, 0.911],
  [1.3, 0.856],
  [1.55, 0.83],
  [1.81, 0.82],
  [2.47, 0.819],
  [3.1, 0.818],
  [4.22, 0.815],
];

export const kritzinger2004: PublishedSource = {
  name: "Kritzinger 2004",
  nature: "handbook",
  citation:
    "Kritzinger (2004), drag of flat-ended cylinders along the stream over length/diameter, digitised by others",
  values: axial.map(([lengthToDiameter, value]) =>
    published(
      {
        group,
        scatter: { absolute: 0.04 },
        grade: "A",
        howObtained: "public copy of a digitised figure",
        shownOnly: "the engine reads its drag along the axis from this table",
      },
      { kind: "axialCylinderDrag", lengthToDiameter, reynolds: 1e5 },
      value,
    ),
  ),
};

export const hoerner1965: PublishedSource = {
  name: "Hoerner 1965",
  nature: "handbook",
  citation: "S. F. Hoerner (1965), Fluid-Dynamic Drag, ch. 3",
  values: [
    published(
      { group, scatter: { relative: 0.05 }, grade: "B", howObtained: "from memory, high confidence" },
      { kind: "axialCylinderDrag", lengthToDiameter: 0, reynolds: 1e5 },
      1.17,
      "disc",
    ),
  ],
};

export const zdravkovich1989: PublishedSource = {
  name: "Zdravkovich et al. 1989",
  nature: "measurement",
  citation:
    "M. M. Zdravkovich, V. P. Brand, G. Mathew and A. Weston (1989), Flow past short circular cylinders with two free ends, J. Fluid Mech. 203, 557-575",
  remark: "Re 6e4 to 2.6e5; asymmetric flow below length/diameter 3.",
  values: (
    [
      [2, 0.625],
      [9, 0.775],
    ] as const
  ).map(([lengthToDiameter, value]) =>
    published(
      { group, scatter: { absolute: 0.04 }, grade: "C", howObtained: "from memory, low confidence" },
      { kind: "crossFlowCylinderDrag", lengthToDiameter, reynolds: 1e5 },
      value,
    ),
  ),
};

export const mckinney1960: PublishedSource = {
  name: "McKinney 1960",
  nature: "handbook",
  experiment: "Wieselsberger",
  citation: "NASA TN D-540 (1960), figure 5, as quoted in a source note",
  remark:
    "Its length/diameter 1, 10 and 20 are those of Wieselsberger, so the one between is probably his too. The report's own measurements at Re 5e5 to 1.65e6 lie below 0.5.",
  values: [
    published(
      {
        group,
        scatter: { relative: 0.08 },
        grade: "C",
        howObtained: "public copy of a digitised figure",
        shownOnly: "of one experiment with a table that the engine reads",
      },
      { kind: "crossFlowCylinderDrag", lengthToDiameter: 3, reynolds: 8.8e4 },
      0.74,
    ),
  ],
};
