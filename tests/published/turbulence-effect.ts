import { type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

const crisis = { dragCoefficient: 0.7, reynoldsFrom: 2e4, reynoldsTo: 1e6 } as const;

export const dryden1937: PublishedSource = {
  name: "Dryden et al. 1937",
  nature: "measurement",
  citation:
    "H. L. Dryden, G. B. Schubauer, W. C. Mock and H. K. Skramstad (1937), Measurements of intensity and scale of wind-tunnel turbulence and their relation to the critical Reynolds number of spheres, NACA TR 581",
  remark:
    "Critical Reynolds number of spheres (Cd 0.3) over that in still air, 3.85e5; carried over to the circle as a ratio.",
  values: (
    [
      [0.0085, 2.7e5 / 3.85e5],
      [0.025, 1.3e5 / 3.85e5],
    ] as const
  ).map(([turbulenceIntensity, ratio]) =>
    published(
      {
        group: "turbulence effect",
        scatter: { relative: 0.25 },
        grade: "C",
        howObtained: "from memory, medium confidence",
      },
      {
        kind: "criticalReynoldsRatio",
        ...smoothStream(turbulenceIntensity),
        ...crisis,
        referenceTurbulenceIntensity: 0.0005,
      },
      Number(ratio.toFixed(3)),
    ),
  ),
};

export const bearman1968: PublishedSource = {
  name: "Bearman 1968",
  nature: "measurement",
  citation: "P. W. Bearman (1968), Some effects of turbulence on the flow around bluff bodies, NPL Aero Report 1264",
  remark: "Critical Reynolds number times T^1.34 is constant, T = Tu (D / Lx)^(1/5); here at equal scale ratio.",
  values: [0.02, 0.04].map((turbulenceIntensity) =>
    published(
      {
        group: "turbulence effect",
        scatter: { relative: 0.25 },
        grade: "C",
        howObtained: "from memory, medium confidence",
      },
      {
        kind: "criticalReynoldsRatio",
        ...smoothStream(turbulenceIntensity),
        ...crisis,
        referenceTurbulenceIntensity: 0.01,
      },
      Number(((turbulenceIntensity / 0.01) ** -1.34).toFixed(3)),
    ),
  ),
};

const low = { group: "turbulence effect", grade: "C", howObtained: "from memory, low confidence" } as const;

export const cheungMelbourne1983: PublishedSource = {
  name: "Cheung and Melbourne 1983",
  nature: "measurement",
  citation:
    "J. C. K. Cheung and W. H. Melbourne (1983), Turbulence effects on some aerodynamic parameters of a circular cylinder at supercritical Reynolds numbers, J. Wind Eng. Ind. Aerodyn. 14, 399-410",
  remark: "Re 7e4 to 6e5, turbulence 0.4 to 9.1 %.",
  values: [
    published(
      { ...low, scatter: { relative: 0.2 } },
      { kind: "reynoldsAtDrag", ...smoothStream(0.004), ...crisis },
      3.3e5,
      "between 3e5 and 4e5 at its lowest",
    ),
    published(
      { ...low, scatter: { absolute: 0.05 } },
      { kind: "lowestDragCoefficient", ...smoothStream(0.004), reynoldsFrom: 7e4, reynoldsTo: 6e5 },
      0.275,
    ),
    published(
      { ...low, scatter: { absolute: 0.08 } },
      { kind: "lowestDragCoefficient", ...smoothStream(0.045), reynoldsFrom: 7e4, reynoldsTo: 6e5 },
      0.45,
      "crisis below Re 1e5",
    ),
    published(
      { ...low, scatter: { absolute: 0.1 } },
      { kind: "meanDragCoefficient", ...smoothStream(0.09), reynoldsFrom: 1e5, reynoldsTo: 6e5 },
      0.575,
      "no minimum, rising from 0.5 to 0.65",
    ),
  ],
};
