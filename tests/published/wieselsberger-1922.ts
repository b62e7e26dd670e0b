import { wieselsberger1922 as curve } from "../../shared/engine/reference/smoothCylinderCurve";
import { type CommonPart, type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

const smooth: CommonPart = {
  group: "smooth cylinder",
  scatter: { relative: 0.05 },
  grade: "A",
  howObtained: "public copy of a digitised figure",
};

/** Cylinders with two free ends: diameter over length, drag coefficient. */
const finiteLengths: readonly (readonly [number, number])[] = [
  [0.0237, 0.986],
  [0.049, 0.926],
  [0.0998, 0.82],
  [0.2, 0.737],
  [0.341, 0.744],
  [0.498, 0.687],
  [0.998, 0.614],
];

const ownTable = "the engine's end relief is a mean of tables, this one among them";

/** Above this the layer is no longer laminar at separation everywhere; the figure falls slowly where others jump. */
const endOfLaminarSeparation = 1.65e5;
const endOfCrisis = 5e5;

export const wieselsberger1922: PublishedSource = {
  name: "Wieselsberger 1922",
  nature: "measurement",
  experiment: "Wieselsberger",
  citation: curve.source,
  remark:
    "Crisis gradual and late (finish and turbulence of a tunnel of 1921), so its slope is shown but never a gate. Values below Re 1.5e4 are left out: there the wake's shear layers stay laminar, which the closure does not know.",
  values: [
    ...curve.points
      .filter(([reynolds]) => reynolds >= 1.5e4)
      .map(([reynolds, value]) => {
        const common: CommonPart =
          reynolds < endOfLaminarSeparation
            ? smooth
            : reynolds < endOfCrisis
              ? { ...smooth, grade: "C", scatter: { relative: 0.15 } }
              : { ...smooth, grade: "B", scatter: { relative: 0.1 } };
        return published(common, { kind: "dragCoefficient", ...smoothStream(), reynolds }, value);
      }),
    ...finiteLengths.map(([diameterToLength, value]) =>
      published(
        { ...smooth, group: "short and axial cylinders", shownOnly: ownTable },
        { kind: "crossFlowCylinderDrag", lengthToDiameter: 1 / diameterToLength, reynolds: 8.8e4 },
        value,
        "Reynolds number from memory",
      ),
    ),
  ],
};
