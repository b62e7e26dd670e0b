import { type PublishedSource, published } from "./publishedValue";
import { sectionStream, smoothStream } from "./streams";

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

/** Re and Cd of the plain cylinder and of that with a splitter plate, symbols of figure 2. */
const plainDrag: readonly (readonly [number, number])[] = [
  [1.813e6, 0.429],
  [2.215e6, 0.519],
  [3.645e6, 0.672],
  [3.673e6, 0.731],
  [5.031e6, 0.74],
  [5.196e6, 0.679],
  [6.907e6, 0.681],
  [8.375e6, 0.713],
];
const splitterPlateDrag: readonly (readonly [number, number])[] = [
  [1.807e6, 0.449],
  [1.877e6, 0.459],
  [2.672e6, 0.571],
  [2.728e6, 0.59],
];

const transcritical = { ...smoothStream(), reynoldsFrom: 3.5e6, reynoldsTo: 1e7 } as const;
const read = { group: "smooth cylinder", grade: "A", howObtained: "public copy" } as const;
const digitised = {
  grade: "B",
  howObtained: "public copy of a digitised figure",
  scatter: { absolute: 0.03 },
} as const;

export const roshko1961: PublishedSource = {
  name: "Roshko 1961",
  nature: "measurement",
  facility: {
    blockageRatio: null,
    blockageCorrected: true,
    lengthToDiameter: null,
    howKnown: "public copy",
    remark: "pressurised tunnel, diameter 18 in, sandblasted steel",
  },
  citation:
    "A. Roshko (1961), Experiments on the flow past a circular cylinder at very high Reynolds number, J. Fluid Mech. 10, 345-356",
  remark:
    "Constant above Re 3.5e6. Single points read from the open copy by hand; on the rising part, near Re 2e6, they lie 0.1 to 0.15 above Schewe's.",
  values: [
    ...plainDrag.map(([reynolds, value]) =>
      published(
        { ...digitised, group: "smooth cylinder" },
        { kind: "dragCoefficient", ...smoothStream(), reynolds },
        value,
      ),
    ),
    ...splitterPlateDrag.map(([reynolds, value]) =>
      published(
        {
          ...digitised,
          group: "splitter plate",
          shownOnly: "a check of the wake without shedding, beside the plain circle",
        },
        {
          kind: "dragCoefficient",
          ...sectionStream({ shape: "circle with splitter plate" }),
          reynolds,
        },
        value,
      ),
    ),
    published(
      { ...read, scatter: { absolute: 0.03 }, shownOnly: "the mean of the single points above" },
      { kind: "meanDragCoefficient", ...transcritical },
      0.7,
    ),
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
