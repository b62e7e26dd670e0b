import { type CommonPart, type Group, type PublishedSource, published } from "./publishedValue";
import type { PublishedSection } from "./quantity";
import { rectangle, sectionStream } from "./streams";

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
    group: "smooth cylinder",
    section: { shape: "circle" },
    subcritical: 1.05,
    supercritical: 0.3,
    criticalReynolds: 3.5e5,
  },
  {
    group: "ellipses",
    section: { shape: "ellipse", lengthToHeight: 2 },
    subcritical: 0.6,
    supercritical: 0.2,
    criticalReynolds: 2.5e5,
  },
  {
    group: "ellipses",
    section: { shape: "ellipse", lengthToHeight: 0.5 },
    subcritical: 1.6,
    supercritical: 0.6,
    criticalReynolds: null,
  },
  { group: rounded, section: rectangle(1, 0.021), subcritical: 2.0, supercritical: null, criticalReynolds: null },
  { group: rounded, section: rectangle(1, 0.167), subcritical: 1.25, supercritical: 0.6, criticalReynolds: 6.5e5 },
  { group: rounded, section: rectangle(1, 0.333), subcritical: 1.0, supercritical: 0.35, criticalReynolds: 3.5e5 },
  { group: rounded, section: rectangle(2, 0.5), subcritical: 0.7, supercritical: 0.25, criticalReynolds: null },
];

const recalled = { grade: "C", howObtained: "from memory, low confidence" } as const;

export const delanySorensen1953: PublishedSource = {
  name: "Delany and Sorensen 1953",
  citation: "N. K. Delany and N. E. Sorensen (1953), Low-speed drag of cylinders of various shapes, NACA TN 3038",
  remark:
    "The authors found their circular cylinder 10 to 15 % lower than accepted below the crisis (leakage at the ends), so their levels are shown, never a gate.",
  values: cylinders.flatMap(({ group, section, subcritical, supercritical, criticalReynolds }) => {
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
  }),
};
