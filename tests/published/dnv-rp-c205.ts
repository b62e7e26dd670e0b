import { offshoreDesignCurve } from "../../shared/engine/reference/smoothCylinderCurve";
import { type PublishedSource, published } from "./publishedValue";
import { roughStream, smoothStream } from "./streams";

/**
 * Drag of a cylinder beyond the crisis over its roughness.
 * @param roughnessRatio k / D, above 0
 * @returns 0.65 below k / D = 1e-4, (29 + 4 log10 k/D) / 20 up to 1e-2, 1.05 above
 */
export function offshoreTranscriticalDrag(roughnessRatio: number): number {
  if (roughnessRatio < 1e-4) return 0.65;
  return roughnessRatio > 1e-2 ? 1.05 : (29 + 4 * Math.log10(roughnessRatio)) / 20;
}

const lengthFactors: readonly (readonly [number, number, number])[] = [
  [2, 0.58, 0.8],
  [5, 0.62, 0.8],
  [10, 0.68, 0.82],
  [20, 0.74, 0.9],
  [40, 0.82, 0.98],
  [50, 0.87, 0.99],
  [100, 0.98, 1.0],
];

export const dnvRpC205: PublishedSource = {
  name: "DNV-RP-C205",
  nature: "design code",
  citation: offshoreDesignCurve.source,
  remark: "A design recommendation: a fair summary of measurements, not a measurement. Roughness levels from memory.",
  values: [
    ...offshoreDesignCurve.points.map(([reynolds, value]) =>
      published(
        {
          group: "smooth cylinder",
          scatter: reynolds > 2.6e5 && reynolds < 5.5e5 ? { absolute: 0.2 } : { relative: 0.08 },
          grade: "B",
          howObtained: "public copy of a digitised figure",
        },
        { kind: "dragCoefficient", ...smoothStream(), reynolds },
        value,
      ),
    ),
    ...[1e-5, 1e-4, 3e-4, 1e-3, 3e-3, 4.5e-3, 1e-2].map((ratio) =>
      published(
        {
          group: ratio > 1e-5 ? "rough cylinder" : "smooth cylinder",
          scatter: { absolute: 0.1 },
          grade: "B",
          howObtained: "from memory, high confidence",
        },
        { kind: "meanDragCoefficient", ...roughStream(ratio), reynoldsFrom: 2e6, reynoldsTo: 1e7 },
        offshoreTranscriticalDrag(ratio),
      ),
    ),
    ...lengthFactors.flatMap(([lengthToDiameter, below, above]) =>
      [
        [1e5, below],
        [5e5, above],
      ].map(([reynolds, value]) =>
        published(
          {
            group: "short and axial cylinders",
            scatter: { relative: 0.1 },
            grade: "B",
            howObtained: "public copy",
            shownOnly: "the engine's end relief is a mean of tables, this one among them",
          },
          { kind: "crossFlowLengthFactor", lengthToDiameter, reynolds },
          value,
          "one column below Re 2e5, one from there on",
        ),
      ),
    ),
  ],
};
