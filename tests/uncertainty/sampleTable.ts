import { gradeNodes } from "../../shared/engine/geometry/gradedNodes";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import type { Regime } from "../../shared/engine/solution";
import type { BandTable } from "../../shared/engine/trust/bandTable";
import { describeSection, type SectionDescription } from "../../shared/engine/trust/sectionDescription";

const even = (halfWidth: number): Record<Regime, number> => ({
  subcritical: halfWidth,
  critical: halfWidth,
  supercritical: halfWidth,
  transcritical: halfWidth,
});

/** Round numbers that are easy to find again. */
export const sampleTable: BandTable = {
  crisisReynoldsFactor: { "circle in a quiet stream": 1.25, "circle in a turbulent stream": 1.5, "other section": 2 },
  halfWidths: {
    "smooth circle": { ...even(0.1), supercritical: 0.2 },
    "rough circle": even(0.25),
    ellipse: even(0.15),
    "sharp rectangle": even(0.3),
    "rounded rectangle": even(0.2),
    other: even(0.5),
  },
  checked: {
    "smooth circle": {
      reynolds: [1e4, 1e7],
      sandGrainRoughnessRatio: [1e-5, 1e-5],
      turbulenceIntensity: [0.001, 0.09],
      shapes: [[1, 0.5]],
    },
    "rough circle": {
      reynolds: [2e4, 1e7],
      sandGrainRoughnessRatio: [1e-4, 0.01],
      turbulenceIntensity: [0.001, 0.007],
      shapes: [[1, 0.5]],
    },
    ellipse: {
      reynolds: [2e4, 2e6],
      sandGrainRoughnessRatio: [1e-5, 1e-5],
      turbulenceIntensity: [0.001, 0.001],
      shapes: [
        [0.5, 0],
        [2, 0],
        [4, 0],
      ],
    },
    "sharp rectangle": {
      reynolds: [5e4, 2e6],
      sandGrainRoughnessRatio: [1e-5, 1e-5],
      turbulenceIntensity: [0.001, 0.001],
      shapes: [
        [0.1, 0.01],
        [1, 0.01],
        [10, 0.01],
      ],
    },
    "rounded rectangle": {
      reynolds: [1e5, 2e6],
      sandGrainRoughnessRatio: [1e-5, 1e-5],
      turbulenceIntensity: [0.001, 0.001],
      shapes: [
        [1, 0.2],
        [2, 0.5],
      ],
    },
  },
};

export function described(spec: SectionSpec, incidence = 0): SectionDescription {
  const contour = buildContour(spec);
  if (!contour.ok) throw new Error(contour.problem.message);
  const nodes = gradeNodes(contour.value, 200);
  if (!nodes.ok) throw new Error(nodes.problem.message);
  return describeSection(nodes.value, incidence);
}

export const circle: SectionDescription = described({ family: "circle", diameter: 0.08 });

/** A rectangle 1 m high. */
export function rectangle(lengthToHeight: number, edgeRadius: number): SectionDescription {
  return described({ family: "roundedRectangle", length: lengthToHeight, height: 1, edgeRadius });
}
