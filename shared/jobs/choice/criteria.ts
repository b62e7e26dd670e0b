/** What a choice can look at. */
export const criterionKeys = [
  "dragInPlay",
  "dragUpright",
  "dragFlat",
  "dragFaceOn",
  "mass",
  "momentOfInertia",
  "frontalArea",
  "liking",
  "cost",
  "durability",
  "coatStrain",
  "floorCare",
] as const;

export type CriterionKey = (typeof criterionKeys)[number];

export type CriterionSense = "least" | "most" | "near";

export interface CriterionDescription {
  readonly label: string;
  /** Of its values in the results. */
  readonly unit: string;
  /** Unit and factor in which people read it. */
  readonly shownUnit: string;
  readonly shownFactor: number;
  /** What is better when the case does not say; null where the case must. */
  readonly sense: CriterionSense | null;
  /** How value grows when the case does not say. */
  readonly scale: "linear" | "log";
}

const drag = (label: string): CriterionDescription => ({
  label,
  unit: "m2",
  shownUnit: "cm2",
  shownFactor: 1e4,
  sense: "least",
  scale: "linear",
});

/** Every criterion, in the order in which people are shown it. */
export const criterionCatalogue: Readonly<Record<CriterionKey, CriterionDescription>> = {
  dragInPlay: drag("drag area over the attitudes of play"),
  dragUpright: drag("drag area upright"),
  dragFlat: drag("drag area flat"),
  dragFaceOn: drag("drag area face-on"),
  mass: { label: "mass", unit: "kg", shownUnit: "kg", shownFactor: 1, sense: null, scale: "linear" },
  momentOfInertia: {
    label: "moment of inertia about the axis",
    unit: "kg m2",
    shownUnit: "kg cm2",
    shownFactor: 1e4,
    sense: null,
    scale: "linear",
  },
  frontalArea: {
    label: "frontal area edge-on",
    unit: "m2",
    shownUnit: "cm2",
    shownFactor: 1e4,
    sense: "least",
    scale: "linear",
  },
  liking: {
    label: "liking, mean standing from -1 (last) to 1 (first)",
    unit: "",
    shownUnit: "",
    shownFactor: 1,
    sense: "most",
    scale: "linear",
  },
  cost: { label: "unit cost", unit: "", shownUnit: "", shownFactor: 1, sense: "least", scale: "linear" },
  durability: {
    label: "hours of play to the least cover",
    unit: "h",
    shownUnit: "h",
    shownFactor: 1,
    sense: "most",
    // Twice as long is worth as much again, from weeks to years: a choice without a source, which the case can change.
    scale: "log",
  },
  coatStrain: {
    label: "coat squeezed in an impact",
    unit: "%",
    shownUnit: "%",
    shownFactor: 1,
    sense: "least",
    scale: "linear",
  },
  floorCare: {
    label: "peak pressure on what is hit",
    unit: "Pa",
    shownUnit: "MPa",
    shownFactor: 1e-6,
    sense: "least",
    scale: "linear",
  },
};
