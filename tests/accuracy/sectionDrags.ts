import { experimentOf, type Group, type PublishedSource, type PublishedValue } from "../published/publishedValue";
import type { Quantity, SectionQuantity } from "../published/quantity";

/** The engine's value for a quantity; null when it gives none. */
export type AnswerOf = (quantity: Quantity) => number | null;

/** A published drag coefficient of a section beside the engine's. */
export interface SectionDrag {
  readonly source: string;
  readonly experiment: string;
  readonly value: PublishedValue;
  readonly quantity: SectionQuantity;
  readonly published: number;
  readonly predicted: number | null;
}

const dragKinds: readonly Quantity["kind"][] = ["dragCoefficient", "meanDragCoefficient", "lowestDragCoefficient"];

/** Groups of drag coefficients that stand for one shape, in the order of the report. */
export const sectionGroups: readonly Group[] = [
  "smooth cylinder",
  "rough cylinder",
  "turbulence effect",
  "ellipses",
  "rectangles over length/height",
  "rounded rectangles over corner radius",
  "triangles and polygons",
  "round noses with a flat rear",
];

/** Every counted drag coefficient of a section; bounds, which lie to one side of what was measured, are left out. */
export function sectionDrags(sources: readonly PublishedSource[], answerOf: AnswerOf): SectionDrag[] {
  return sources.flatMap((source) =>
    source.values.flatMap((value) => {
      const { quantity, scatter, shownOnly } = value;
      if (shownOnly !== undefined || "relativeBelow" in scatter || !dragKinds.includes(quantity.kind)) return [];
      if (!("section" in quantity)) return [];
      return [
        {
          source: source.name,
          experiment: experimentOf(source),
          value,
          quantity,
          published: value.value,
          predicted: answerOf(quantity),
        },
      ];
    }),
  );
}

/** Reynolds numbers between which the drag of circles falls so steeply that an error in level says little. */
export const circleCrisis = [2.5e5, 4.2e5] as const;

/** Whether a value was read in the crisis of a circle; values of a whole range never were. */
export function isInCrisis({ quantity }: SectionDrag): boolean {
  if (quantity.section.shape !== "circle" || !("reynolds" in quantity)) return false;
  return quantity.reynolds > circleCrisis[0] && quantity.reynolds < circleCrisis[1];
}
