import { type CommonPart, type Group, type PublishedSource, type PublishedValue, published } from "./publishedValue";
import type { PublishedSection } from "./quantity";
import { rectangle, sectionStream, smoothStream } from "./streams";

/** Re and Cd of the circle, marks of figure 5 found with a correlation of 0.40 or more (weaker ones come in ghost pairs). */
const circleDrag: readonly (readonly [number, number])[] = [
  [1.304e4, 1.031],
  [2.487e4, 1.113],
  [3.003e4, 1.11],
  [3.291e4, 1.11],
  [3.687e4, 1.045],
  [3.804e4, 1.098],
  [4.42e4, 1.135],
  [4.664e4, 1.143],
  [5.456e4, 1.123],
  [5.822e4, 1.13],
  [7.479e4, 1.13],
  [8.122e4, 1.128],
  [1.052e5, 1.169],
  [1.068e5, 1.076],
  [2.892e5, 0.937],
  [3.044e5, 0.925],
  [3.426e5, 0.837],
  [3.48e5, 0.798],
  [3.838e5, 0.465],
  [3.873e5, 0.524],
  [3.934e5, 0.542],
  [4.032e5, 0.37],
  [4.199e5, 0.291],
  [4.246e5, 0.245],
  [4.543e5, 0.272],
  [4.763e5, 0.235],
  [4.916e5, 0.244],
  [5.093e5, 0.251],
  [5.239e5, 0.232],
  [5.296e5, 0.279],
  [5.424e5, 0.292],
  [5.519e5, 0.237],
  [5.665e5, 0.259],
  [5.702e5, 0.294],
  [6.088e5, 0.276],
  [6.253e5, 0.262],
  [6.338e5, 0.303],
  [6.732e5, 0.265],
  [7.271e5, 0.308],
  [7.305e5, 0.267],
  [7.72e5, 0.275],
  [7.899e5, 0.265],
  [8.257e5, 0.268],
  [8.663e5, 0.272],
  [9.304e5, 0.279],
  [9.629e5, 0.334],
  [9.852e5, 0.353],
  [1.012e6, 0.403],
  [1.088e6, 0.409],
  [1.107e6, 0.364],
  [1.211e6, 0.391],
  [1.278e6, 0.42],
  [1.424e6, 0.445],
  [1.492e6, 0.44],
  [1.55e6, 0.304],
  [1.554e6, 0.452],
  [1.589e6, 0.469],
  [1.611e6, 0.358],
  [1.685e6, 0.389],
  [1.719e6, 0.404],
  [1.786e6, 0.419],
  [1.81e6, 0.442],
  [1.94e6, 0.493],
  [2.02e6, 0.508],
];

interface Cylinder {
  readonly group: Group;
  readonly section: PublishedSection;
  /** Drag below and above the crisis (null: no crisis up to Re 2e6), and the Reynolds number half way down. */
  readonly subcritical: number;
  readonly supercritical: number | null;
  readonly criticalReynolds: number | null;
}

const rounded = "rounded rectangles over corner radius";
const cylinders: readonly Cylinder[] = [
  {
    group: "ellipses",
    section: { shape: "ellipse", lengthToHeight: 2 },
    subcritical: 0.6,
    supercritical: 0.2,
    criticalReynolds: 2.5e5,
  },
  { group: rounded, section: rectangle(1, 0.021), subcritical: 2.0, supercritical: null, criticalReynolds: null },
  { group: rounded, section: rectangle(1, 0.167), subcritical: 1.25, supercritical: 0.6, criticalReynolds: 6.5e5 },
  { group: rounded, section: rectangle(1, 0.333), subcritical: 1.0, supercritical: 0.35, criticalReynolds: 3.5e5 },
];

/** From here on two branches, a symmetric and a one-sided flow, may be mixed. */
const twoBranches = 7e5;

const circle = smoothStream();
const read = {
  group: "smooth cylinder",
  grade: "B",
  howObtained: "public copy of a digitised figure",
} as const;
const samePoints = "taken from the single points above";

const recalled = { grade: "C", howObtained: "from memory, low confidence" } as const;

export const delanySorensen1953: PublishedSource = {
  name: "Delany and Sorensen 1953",
  nature: "measurement",
  experiment: "NACA TN 3038",
  citation: "N. K. Delany and N. E. Sorensen (1953), Low-speed drag of cylinders of various shapes, NACA TN 3038",
  remark:
    "The circle's single points are read from the open scan; the other shapes are from memory. The authors found their circular cylinder lower than accepted below the crisis (leakage at the ends).",
  values: [...circleValues(), ...cylinders.flatMap(shapeValues)],
};

function circleValues(): PublishedValue[] {
  return [
    ...circleDrag.map(([reynolds, value]) =>
      published(
        { ...read, scatter: { absolute: reynolds < 4e5 || reynolds > twoBranches ? 0.05 : 0.03 } },
        { kind: "dragCoefficient", ...circle, reynolds },
        value,
        reynolds > twoBranches && reynolds < 1.9e6 ? "of the symmetric or of the one-sided flow" : undefined,
      ),
    ),
    published(
      { ...read, scatter: { absolute: 0.02 }, shownOnly: samePoints },
      { kind: "lowestDragCoefficient", ...circle, reynoldsFrom: 1e5, reynoldsTo: 2e6 },
      0.245,
    ),
    published(
      { ...read, scatter: { relative: 0.05 } },
      { kind: "reynoldsAtDrag", ...circle, dragCoefficient: 0.7, reynoldsFrom: 5e4, reynoldsTo: 2e6 },
      3.58e5,
    ),
  ];
}

function shapeValues({ group, section, subcritical, supercritical, criticalReynolds }: Cylinder): PublishedValue[] {
  const common: CommonPart = { ...recalled, group, scatter: { relative: 0.15 } };
  const stream = sectionStream(section);
  const values = [published(common, { kind: "dragCoefficient", ...stream, reynolds: 1e5 }, subcritical)];
  if (supercritical === null) {
    return [...values, published(common, { kind: "dragCoefficient", ...stream, reynolds: 2e6 }, subcritical)];
  }
  values.push(
    published(
      { ...common, scatter: { relative: 0.25 } },
      { kind: "lowestDragCoefficient", ...stream, reynoldsFrom: 1e5, reynoldsTo: 2e6 },
      supercritical,
    ),
  );
  if (criticalReynolds !== null) {
    values.push(
      published(
        { ...common, scatter: { relative: 0.2 } },
        {
          kind: "reynoldsAtDrag",
          ...stream,
          dragCoefficient: (subcritical + supercritical) / 2,
          reynoldsFrom: 5e4,
          reynoldsTo: 2e6,
        },
        criticalReynolds,
      ),
    );
  }
  return values;
}
