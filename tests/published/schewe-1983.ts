import { type CommonPart, type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

const recalled: CommonPart = {
  group: "smooth cylinder",
  scatter: { absolute: 0.05 },
  grade: "B",
  howObtained: "from memory, high confidence",
};
const strouhal: CommonPart = { ...recalled, scatter: { absolute: 0.02 } };
const stream = smoothStream();

export const schewe1983: PublishedSource = {
  name: "Schewe 1983",
  citation:
    "G. Schewe (1983), On the force fluctuations acting on a circular cylinder in crossflow from subcritical up to transcritical Reynolds numbers, J. Fluid Mech. 133, 265-285",
  remark:
    "Pressurised tunnel of low turbulence; two sudden jumps with a steady one-sided state between Re 2.8e5 and 3.5e5.",
  values: [
    published(recalled, { kind: "dragCoefficient", ...stream, reynolds: 1e5 }, 1.2),
    published(recalled, { kind: "dragCoefficient", ...stream, reynolds: 2e5 }, 1.2),
    published(strouhal, { kind: "strouhal", ...stream, reynolds: 1e5 }, 0.2),
    published(
      { ...recalled, scatter: { relative: 0.12 }, howObtained: "from memory, medium confidence" },
      { kind: "reynoldsAtDrag", ...stream, dragCoefficient: 0.7, reynoldsFrom: 1e5, reynoldsTo: 1e6 },
      3.15e5,
      "middle of the critical range 2.8e5 to 3.5e5",
    ),
    published(
      { ...recalled, grade: "C", scatter: { absolute: 0.2 }, howObtained: "from memory, medium confidence" },
      { kind: "largestOneSidedLift", ...stream, reynoldsFrom: 2e5, reynoldsTo: 6e5 },
      1.15,
      "steady one-sided state, either side, 1 to 1.3 between Re 2.8e5 and 3.5e5",
    ),
    published(recalled, { kind: "lowestDragCoefficient", ...stream, reynoldsFrom: 2e5, reynoldsTo: 2e6 }, 0.22),
    published(recalled, { kind: "meanDragCoefficient", ...stream, reynoldsFrom: 4e5, reynoldsTo: 1e6 }, 0.22),
    published(strouhal, { kind: "strouhal", ...stream, reynolds: 4e5 }, 0.48),
    published(strouhal, { kind: "strouhal", ...stream, reynolds: 8e5 }, 0.48),
    published(recalled, { kind: "dragCoefficient", ...stream, reynolds: 5e6 }, 0.52),
    published(recalled, { kind: "dragCoefficient", ...stream, reynolds: 7.1e6 }, 0.52),
    published(strouhal, { kind: "strouhal", ...stream, reynolds: 7.1e6 }, 0.29),
  ],
};
