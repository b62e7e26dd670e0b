import { type CommonPart, type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

/**
 * Re and Cd; of two points at 1.503e6 the second stands at 1.504e6, so that both are kept. Symbols of Schewe's figure as drawn again by
 * Rodriguez et al. (2015), figure 4.
 */
const redrawn2015: readonly (readonly [number, number])[] = [
  [9.54e4, 1.217],
  [1.198e5, 1.206],
  [1.342e5, 1.202],
  [1.393e5, 1.195],
  [1.997e5, 1.117],
  [2.074e5, 1.117],
  [2.782e5, 0.994],
  [2.834e5, 0.954],
  [2.973e5, 0.517],
  [3.001e5, 0.546],
  [3.029e5, 0.702],
  [3.087e5, 0.498],
  [3.269e5, 0.442],
  [3.494e5, 0.279],
  [4.262e5, 0.224],
  [5.249e5, 0.22],
  [7.174e5, 0.223],
  [8.113e5, 0.219],
  [1.088e6, 0.223],
  [1.291e6, 0.249],
  [1.354e6, 0.241],
  [1.367e6, 0.256],
  [1.503e6, 0.249],
  [1.504e6, 0.271],
  [1.517e6, 0.371],
  [1.715e6, 0.297],
  [2.054e6, 0.393],
  [2.073e6, 0.359],
  [3.057e6, 0.452],
  [3.489e6, 0.489],
  [4.382e6, 0.529],
  [5.194e6, 0.537],
  [6.584e6, 0.529],
  [7.171e6, 0.529],
];

/** The same from Stabnikov and Garbaruk (2020), figure 3, where the first reading has nothing. */
const redrawn2020: readonly (readonly [number, number])[] = [
  [3.99e4, 1.131],
  [4.6e4, 1.244],
  [6.22e4, 1.235],
  [7.09e4, 1.225],
  [8.88e4, 1.219],
];

/** Between these the drag jumps, and two readings of the figure differ by up to this. */
const jumps = [2.75e5, 3.5e5] as const;

const recalled: CommonPart = {
  group: "smooth cylinder",
  scatter: { absolute: 0.05 },
  grade: "B",
  howObtained: "from memory, high confidence",
};
const read: CommonPart = { ...recalled, howObtained: "public copy of a digitised figure" };
const strouhal: CommonPart = { ...recalled, scatter: { absolute: 0.02 } };
const stream = smoothStream();
const samePoints = "taken from the single points above";

export const schewe1983: PublishedSource = {
  name: "Schewe 1983",
  nature: "measurement",
  facility: {
    blockageRatio: 0.1,
    blockageCorrected: false,
    lengthToDiameter: 10,
    howKnown: "from memory, medium confidence",
    remark: "pressurised tunnel, turbulence below 0.4 %, polished",
  },
  citation:
    "G. Schewe (1983), On the force fluctuations acting on a circular cylinder in crossflow from subcritical up to transcritical Reynolds numbers, J. Fluid Mech. 133, 265-285; drag redrawn in Rodriguez et al. (2015), Int. J. Heat Fluid Flow 55, 91, figure 4, and in Stabnikov and Garbaruk (2020), J. Phys. Conf. Ser. 1697, 012224, figure 3",
  remark:
    "Third hand: a public data folder of redrawn figures. Two sudden jumps with a steady one-sided state between Re 2.8e5 and 3.5e5; near Re 1.5e6 two values stand side by side.",
  values: [
    ...redrawn2020.map(([reynolds, value]) =>
      published(
        { ...read, scatter: { absolute: 0.03 } },
        { kind: "dragCoefficient", ...stream, reynolds },
        value,
        "second reading of the figure",
      ),
    ),
    ...redrawn2015.map(([reynolds, value]) =>
      published(
        { ...read, scatter: { absolute: reynolds > jumps[0] && reynolds < jumps[1] ? 0.06 : 0.02 } },
        { kind: "dragCoefficient", ...stream, reynolds },
        value,
      ),
    ),
    published(strouhal, { kind: "strouhal", ...stream, reynolds: 1e5 }, 0.2),
    published(
      { ...read, scatter: { relative: 0.05 } },
      { kind: "reynoldsAtDrag", ...stream, dragCoefficient: 0.7, reynoldsFrom: 1e5, reynoldsTo: 1e6 },
      2.95e5,
      "first below 0.7 between 2.9e5 and 3.0e5",
    ),
    published(
      { ...recalled, grade: "C", scatter: { absolute: 0.2 }, howObtained: "from memory, medium confidence" },
      { kind: "largestOneSidedLift", ...stream, reynoldsFrom: 2e5, reynoldsTo: 6e5 },
      1.15,
      "steady one-sided state, either side, 1 to 1.3 between Re 2.8e5 and 3.5e5",
    ),
    published(
      { ...read, scatter: { absolute: 0.02 }, shownOnly: samePoints },
      { kind: "lowestDragCoefficient", ...stream, reynoldsFrom: 2e5, reynoldsTo: 2e6 },
      0.22,
    ),
    published(
      { ...read, scatter: { absolute: 0.02 }, shownOnly: samePoints },
      { kind: "meanDragCoefficient", ...stream, reynoldsFrom: 4e5, reynoldsTo: 1e6 },
      0.22,
    ),
    published(strouhal, { kind: "strouhal", ...stream, reynolds: 4e5 }, 0.48),
    published(strouhal, { kind: "strouhal", ...stream, reynolds: 8e5 }, 0.48),
    published(strouhal, { kind: "strouhal", ...stream, reynolds: 7.1e6 }, 0.29),
  ],
};
