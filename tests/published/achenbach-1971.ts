import { type CommonPart, type PublishedSource, published } from "./publishedValue";
import { roughStream } from "./streams";

/** ks / D, Re at lowest Cd, lowest Cd, mean Cd at Re 1e6 to 3e6, separation angle there. */
const cylinders: readonly (readonly [number, number, number, number, number])[] = [
  [1.1e-3, 1.8e5, 0.65, 0.95, 108],
  [4.5e-3, 9e4, 0.75, 1.05, 103],
  [9e-3, 6.3e4, 0.8, 1.15, 100],
];

const rough: CommonPart = {
  group: "rough cylinder",
  scatter: { relative: 0.12 },
  grade: "C",
  howObtained: "from memory, low confidence",
};

export const achenbach1971: PublishedSource = {
  name: "Achenbach 1971",
  nature: "measurement",
  facility: {
    blockageRatio: 1 / 6,
    blockageCorrected: false,
    lengthToDiameter: null,
    howKnown: "from memory, medium confidence",
  },
  citation:
    "E. Achenbach (1971), Influence of surface roughness on the cross-flow around a circular cylinder, J. Fluid Mech. 46, 321-335",
  remark: "Emery paper; blockage about 1/6 without correction, so its forces are high; turbulence about 0.7 %.",
  values: cylinders.flatMap(([ratio, criticalReynolds, lowest, transcritical, angle]) => {
    const stream = roughStream(ratio, 0.007);
    return [
      published(
        { ...rough, scatter: { relative: 0.2 } },
        { kind: "reynoldsAtLowestDrag", ...stream, reynoldsFrom: 2e4, reynoldsTo: 1e6 },
        criticalReynolds,
      ),
      published(rough, { kind: "lowestDragCoefficient", ...stream, reynoldsFrom: 2e4, reynoldsTo: 1e6 }, lowest),
      published(rough, { kind: "meanDragCoefficient", ...stream, reynoldsFrom: 1e6, reynoldsTo: 3e6 }, transcritical),
      published({ ...rough, scatter: { absolute: 4 } }, { kind: "separationAngle", ...stream, reynolds: 2e6 }, angle),
    ];
  }),
};
