import { type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

const subcriticalPressure: readonly (readonly [number, number])[] = [
  [0, 1.0],
  [30, 0.24],
  [45, -0.5],
  [60, -1.1],
  [70, -1.26],
  [80, -1.22],
  [90, -1.2],
  [120, -1.2],
  [160, -1.2],
];

const stream = { ...smoothStream(0.006), reynolds: 1.4e5 } as const;
const recalled = { group: "smooth cylinder", grade: "B", howObtained: "from memory, high confidence" } as const;

export const cantwellColes1983: PublishedSource = {
  name: "Cantwell and Coles 1983",
  nature: "measurement",
  citation:
    "B. Cantwell and D. Coles (1983), An experimental study of entrainment and transport in the turbulent near wake of a circular cylinder, J. Fluid Mech. 136, 321-374",
  remark: "Re 1.4e5, turbulence about 0.6 %. The pressures are read as a band, together with Achenbach (1968).",
  values: [
    published({ ...recalled, scatter: { absolute: 0.06 } }, { kind: "dragCoefficient", ...stream }, 1.237),
    published({ ...recalled, scatter: { absolute: 0.06 } }, { kind: "basePressureCoefficient", ...stream }, -1.21),
    published({ ...recalled, scatter: { absolute: 0.006 } }, { kind: "strouhal", ...stream }, 0.179),
    ...subcriticalPressure.map(([angleDegrees, value]) =>
      published(
        {
          group: "smooth cylinder",
          scatter: { absolute: 0.08 },
          grade: "C",
          howObtained: "from memory, medium confidence",
        },
        { kind: "pressureCoefficient", ...stream, angleDegrees },
        value,
      ),
    ),
  ],
};
