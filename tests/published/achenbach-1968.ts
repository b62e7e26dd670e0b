import { type CommonPart, type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

const stream = smoothStream(0.007);
const angle: CommonPart = {
  group: "smooth cylinder",
  scatter: { absolute: 3 },
  grade: "B",
  howObtained: "from memory, high confidence",
};
const force: CommonPart = {
  ...angle,
  grade: "C",
  scatter: { relative: 0.15 },
  howObtained: "from memory, low confidence",
};

export const achenbach1968: PublishedSource = {
  name: "Achenbach 1968",
  nature: "measurement",
  experiment: "Achenbach 1968",
  facility: {
    blockageRatio: 1 / 6,
    blockageCorrected: false,
    lengthToDiameter: null,
    howKnown: "from memory, low confidence",
  },
  citation:
    "E. Achenbach (1968), Distribution of local pressure and skin friction around a circular cylinder in cross-flow up to Re = 5e6, J. Fluid Mech. 34, 625-639",
  remark:
    "Blockage about 1/6 without correction, so its forces are high; turbulence about 0.7 %, although its crisis came at Re 3e5 as in quieter tunnels. Its drag past the crisis is left out: no copy of it was found, and what is drawn under its name disagrees with itself.",
  values: [
    published(angle, { kind: "separationAngle", ...stream, reynolds: 1e5 }, 78),
    published(
      { ...angle, howObtained: "from memory, medium confidence", scatter: { absolute: 6 } },
      { kind: "separationAngle", ...stream, reynolds: 8.5e5 },
      143,
      "140 to 147 through the supercritical range",
    ),
    published(angle, { kind: "separationAngle", ...stream, reynolds: 3.6e6 }, 115),
    published(angle, { kind: "separationAngle", ...stream, reynolds: 5e6 }, 115),
    published(force, { kind: "dragCoefficient", ...stream, reynolds: 1e5 }, 1.2),
    published(force, { kind: "basePressureCoefficient", ...stream, reynolds: 1e5 }, -1.1),
    published(force, { kind: "basePressureCoefficient", ...stream, reynolds: 8.5e5 }, -0.4),
    published(force, { kind: "basePressureCoefficient", ...stream, reynolds: 3.6e6 }, -0.85),
  ],
};

export const curveLabelledAchenbach: PublishedSource = {
  name: "Curve labelled Achenbach 1968",
  nature: "handbook",
  experiment: "Achenbach 1968",
  citation:
    "P. Catalano et al. (2003), Numerical simulation of the flow around a circular cylinder at high Reynolds numbers, Int. J. Heat Fluid Flow 24, 463, figure 3; digitised by others",
  remark:
    "A printed line of unclear pedigree: 0.35 at Re 8.5e5 where the tunnel's later report has 0.59. Only where it falls is used.",
  values: [
    published(
      {
        group: "smooth cylinder",
        scatter: { relative: 0.1 },
        grade: "C",
        howObtained: "public copy of a digitised figure",
      },
      { kind: "reynoldsAtDrag", ...stream, dragCoefficient: 0.7, reynoldsFrom: 1e5, reynoldsTo: 1e6 },
      2.85e5,
    ),
  ],
};
