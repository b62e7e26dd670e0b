import { type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

const transcriticalPressure: readonly (readonly [number, number])[] = [
  [0, 1.0],
  [30, 0.15],
  [45, -0.65],
  [60, -1.4],
  [70, -1.72],
  [80, -1.85],
  [90, -1.6],
  [100, -1.2],
  [110, -0.93],
  [120, -0.87],
  [150, -0.86],
];

const transcritical = { ...smoothStream(), reynoldsFrom: 3.5e6, reynoldsTo: 1e7 } as const;
const read = { group: "smooth cylinder", grade: "A", howObtained: "public copy" } as const;

export const roshko1961: PublishedSource = {
  name: "Roshko 1961",
  citation:
    "A. Roshko (1961), Experiments on the flow past a circular cylinder at very high Reynolds number, J. Fluid Mech. 10, 345-356",
  remark: "Pressurised tunnel, 18 in sandblasted steel, blockage corrected; constant above Re 3.5e6.",
  values: [
    published({ ...read, scatter: { absolute: 0.1 } }, { kind: "meanDragCoefficient", ...transcritical }, 0.7),
    published({ ...read, scatter: { absolute: 0.02 } }, { kind: "meanStrouhal", ...transcritical }, 0.27),
    published(
      {
        group: "smooth cylinder",
        scatter: { absolute: 0.06 },
        grade: "B",
        howObtained: "from memory, high confidence",
      },
      { kind: "basePressureCoefficient", ...smoothStream(), reynolds: 8.4e6 },
      -0.86,
    ),
    ...transcriticalPressure.map(([angleDegrees, value]) =>
      published(
        {
          group: "smooth cylinder",
          scatter: { absolute: 0.12 },
          grade: "C",
          howObtained: "from memory, medium confidence",
        },
        { kind: "pressureCoefficient", ...smoothStream(), reynolds: 8.4e6, angleDegrees },
        value,
      ),
    ),
  ],
};
