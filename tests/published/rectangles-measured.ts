import { type PublishedSource, published } from "./publishedValue";
import { rectangle, sectionStream } from "./streams";

const group = "rectangles over length/height";
const square = sectionStream(rectangle(1));

export const nakaguchi1968: PublishedSource = {
  name: "Nakaguchi et al. 1968",
  nature: "measurement",
  citation:
    "H. Nakaguchi, K. Hashimoto and S. Muto (1968), An experimental study on aerodynamic drag of rectangular cylinders, J. Japan Soc. Aeronaut. Space Sci. 16, 1-5",
  remark: "Sharp rectangles, Re up to 6e4; the flow meets the sides again from length/height 2.8.",
  values: (
    [
      [0.1, 2.0],
      [2 / 3, 2.6],
      [1, 2.0],
    ] as const
  ).map(([lengthToHeight, value]) =>
    published(
      { group, scatter: { relative: 0.07 }, grade: "B", howObtained: "public copy" },
      { kind: "dragCoefficient", ...sectionStream(rectangle(lengthToHeight)), reynolds: 5e4 },
      value,
    ),
  ),
};

const recalled = { group, grade: "B", howObtained: "from memory, medium confidence" } as const;

export const bearmanTrueman1972: PublishedSource = {
  name: "Bearman and Trueman 1972",
  nature: "measurement",
  citation:
    "P. W. Bearman and D. M. Trueman (1972), An investigation of the flow around rectangular cylinders, Aeronautical Quarterly 23, 229-237",
  remark: "Its peak of 2.9 stands against 2.6 (Nakaguchi) and 2.4 (the code); all stay in.",
  values: [
    published(
      { ...recalled, scatter: { relative: 0.07 } },
      { kind: "dragCoefficient", ...sectionStream(rectangle(0.62)), reynolds: 5e4 },
      2.9,
    ),
    published(
      { ...recalled, scatter: { absolute: 0.2 } },
      { kind: "basePressureCoefficient", ...sectionStream(rectangle(0.62)), reynolds: 5e4 },
      -2.2,
    ),
    published({ ...recalled, scatter: { relative: 0.07 } }, { kind: "dragCoefficient", ...square, reynolds: 5e4 }, 2.1),
    published(
      { ...recalled, scatter: { absolute: 0.1 } },
      { kind: "basePressureCoefficient", ...square, reynolds: 5e4 },
      -1.55,
    ),
  ],
};

export const bearmanObasaju1982: PublishedSource = {
  name: "Bearman and Obasaju 1982",
  nature: "measurement",
  citation:
    "P. W. Bearman and E. D. Obasaju (1982), An experimental study of pressure fluctuations on fixed and oscillating square-section cylinders, J. Fluid Mech. 119, 297-321",
  values: [
    published(
      { ...recalled, scatter: { absolute: 0.1 } },
      { kind: "basePressureCoefficient", ...square, reynolds: 2e4 },
      -1.6,
    ),
    published({ ...recalled, scatter: { absolute: 0.01 } }, { kind: "strouhal", ...square, reynolds: 2e4 }, 0.13),
  ],
};

const plate = { ...sectionStream({ shape: "plate across the stream" }), reynolds: 1e5 } as const;
const plateRecalled = { group, grade: "B", howObtained: "from memory, high confidence" } as const;

export const fageJohansen1927: PublishedSource = {
  name: "Fage and Johansen 1927",
  nature: "measurement",
  citation:
    "A. Fage and F. C. Johansen (1927), On the flow of air behind an inclined flat plate of infinite span, Proc. R. Soc. A 116, 170-197",
  remark: "Thin plate across the stream; the engine is given a rectangle of length/height 0.1.",
  values: [
    published({ ...plateRecalled, scatter: { relative: 0.05 } }, { kind: "dragCoefficient", ...plate }, 2.13),
    published({ ...plateRecalled, scatter: { absolute: 0.08 } }, { kind: "basePressureCoefficient", ...plate }, -1.38),
    published({ ...plateRecalled, scatter: { absolute: 0.008 } }, { kind: "strouhal", ...plate }, 0.14),
  ],
};
