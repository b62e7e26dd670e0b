import { edgeOnDrag } from "../../shared/jobs/puck/drag/edgeOnDrag";
import type { SectionDrag } from "../../shared/jobs/puck/drag/sectionDrag";
import type { FiniteBodyQuantity, SectionQuantity } from "../published/quantity";
import { rectangle, sectionStream, smoothStream } from "../published/streams";
import { notPredicted, type Prediction, predicted } from "./prediction";

type DiscQuantity = Extract<FiniteBodyQuantity, { kind: "edgeOnDiscDrag" }>;

/** Chords of the profile over the diameter; drag is linear in the chord between them. */
const chordRatios = [0.5, 0.75, 1] as const;

const note = "strips in plan and profile, and end relief carried on below length/diameter 1";

/** The endless sections that a disc is put together from: the circle in plan, then the profile at each chord. */
export function discSections({ thicknessToDiameter, reynolds }: DiscQuantity): SectionQuantity[] {
  return [
    { kind: "dragCoefficient", ...smoothStream(), reynolds },
    ...chordRatios.map((chord) => ({
      kind: "dragCoefficient" as const,
      ...sectionStream(rectangle(chord / thicknessToDiameter, 0.5)),
      reynolds: reynolds * thicknessToDiameter,
    })),
  ];
}

/** The engine's drag of a disc with a fully rounded rim that moves along its plane in the open. */
export function predictEdgeOnDisc(
  { thicknessToDiameter: thickness, reynolds }: DiscQuantity,
  sections: readonly Prediction[],
): Prediction {
  const missing = sections.find(({ value }) => value === null);
  if (missing !== undefined) return notPredicted(missing.note ?? "no state");
  const [plan, ...profile] = sections.map(({ value, regime }): SectionDrag => {
    return { low: value!, expected: value!, high: value!, regime };
  });
  const rimRadius = thickness / 2;
  const drag = edgeOnDrag(
    { diameter: 1, thickness, frontalArea: 2 * rimRadius * (1 - 2 * rimRadius) + Math.PI * rimRadius ** 2 },
    { plan: () => plan, profile: profile.map((strip, i) => ({ chordRatio: chordRatios[i], drag: () => strip })) },
    reynolds,
    1,
  );
  if (!drag.ok) return notPredicted(drag.problem.message);
  return { ...predicted(drag.value.dragArea.expected / thickness), note };
}
