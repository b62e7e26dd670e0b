import { type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

const recalled = { group: "smooth cylinder", grade: "B", howObtained: "from memory, high confidence" } as const;
const stream = smoothStream(0.002);

export const bearman1969: PublishedSource = {
  name: "Bearman 1969",
  nature: "measurement",
  citation:
    "P. W. Bearman (1969), On vortex shedding from a circular cylinder in the critical Reynolds number regime, J. Fluid Mech. 37, 577-585",
  remark: "Turbulence 0.2 %; a bubble on one side only near Re 3.4e5.",
  values: [
    published(
      { ...recalled, scatter: { absolute: 0.03 } },
      { kind: "lowestDragCoefficient", ...stream, reynoldsFrom: 2e5, reynoldsTo: 1e6 },
      0.23,
    ),
    published(
      { ...recalled, scatter: { relative: 0.1 } },
      { kind: "reynoldsAtLowestDrag", ...stream, reynoldsFrom: 2e5, reynoldsTo: 1e6 },
      4e5,
    ),
    published(
      { ...recalled, scatter: { absolute: 0.08 }, howObtained: "from memory, medium confidence" },
      { kind: "basePressureCoefficient", ...stream, reynolds: 4e5 },
      -0.2,
    ),
    published({ ...recalled, scatter: { absolute: 0.02 } }, { kind: "strouhal", ...stream, reynolds: 4e5 }, 0.46),
  ],
};
