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
  citation:
    "E. Achenbach (1968), Distribution of local pressure and skin friction around a circular cylinder in cross-flow up to Re = 5e6, J. Fluid Mech. 34, 625-639",
  remark:
    "Blockage about 1/6 without correction, so its forces are high; turbulence about 0.7 %, although its crisis came at Re 3e5 as in quieter tunnels.",
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
    published(force, { kind: "dragCoefficient", ...stream, reynolds: 8.5e5 }, 0.6),
    published(force, { kind: "dragCoefficient", ...stream, reynolds: 3.6e6 }, 0.76),
    published(force, { kind: "basePressureCoefficient", ...stream, reynolds: 1e5 }, -1.1),
    published(force, { kind: "basePressureCoefficient", ...stream, reynolds: 8.5e5 }, -0.4),
    published(force, { kind: "basePressureCoefficient", ...stream, reynolds: 3.6e6 }, -0.85),
  ],
};
