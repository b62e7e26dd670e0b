import { type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

/** Re and Cd of wall-resolved large-eddy simulations, table 2. */
const simulated: readonly (readonly [number, number])[] = [
  [2.5e5, 0.833],
  [3.8e5, 0.481],
  [6.5e5, 0.232],
  [7.2e5, 0.213],
];

export const rodriguez2015: PublishedSource = {
  name: "Rodriguez et al. 2015",
  nature: "theory",
  citation:
    "I. Rodriguez, O. Lehmkuhl, J. Chiva, R. Borrell and A. Oliva (2015), On the flow past a circular cylinder from critical to super-critical Reynolds numbers, Int. J. Heat Fluid Flow 55, 91, table 2",
  remark: "Computed, not measured; a stream without turbulence.",
  values: simulated.map(([reynolds, value]) =>
    published(
      {
        group: "smooth cylinder",
        scatter: { relative: 0.1 },
        grade: "C",
        howObtained: "public copy",
        shownOnly: "computed, not measured",
      },
      { kind: "dragCoefficient", ...smoothStream(), reynolds },
      value,
    ),
  ),
};

/** Re and Cd of the composite line, figure 2, read by eye. */
const composite: readonly (readonly [number, number])[] = [
  [1e4, 1.15],
  [6e4, 1.2],
  [2e5, 0.9],
  [2.5e5, 0.6],
  [4.5e5, 0.2],
  [7e5, 0.3],
  [2e6, 0.45],
  [3e6, 0.5],
];

export const jorgensen1973: PublishedSource = {
  name: "Jorgensen 1973",
  nature: "handbook",
  citation:
    "L. H. Jorgensen (1973), Prediction of static aerodynamic characteristics for space-shuttle-like and other bodies, NASA TN D-6996, figures 2 and 4",
  remark:
    "One line through six sources: its crisis, Re 2.3e5 at Cd 0.7, is earlier than that of any single experiment here. End relief from Goldstein (1938).",
  values: [
    ...composite
      .filter(([reynolds]) => reynolds >= 1.5e4)
      .map(([reynolds, value]) =>
        published(
          {
            group: "smooth cylinder",
            scatter: { absolute: 0.05 },
            grade: "C",
            howObtained: "public copy of a digitised figure",
            shownOnly: "a line through other experiments, some of them counted here",
          },
          { kind: "dragCoefficient", ...smoothStream(), reynolds },
          value,
        ),
      ),
    ...(
      [
        [4, 0.62],
        [8, 0.66],
        [16, 0.72],
      ] as const
    ).map(([lengthToDiameter, value]) =>
      published(
        {
          group: "short and axial cylinders",
          scatter: { absolute: 0.03 },
          grade: "C",
          howObtained: "public copy of a digitised figure",
          shownOnly: "of one family with the factors of DNV-RP-C205, which the engine reads",
        },
        { kind: "crossFlowLengthFactor", lengthToDiameter, reynolds: 8.8e4 },
        value,
      ),
    ),
  ],
};
