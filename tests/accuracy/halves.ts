import type { Group, PublishedSource, PublishedValue } from "../published/publishedValue";
import type { Quantity } from "../published/quantity";
import { sectionLabel } from "./preparedSections";

/** A value either helps to fit the calibrated constants or is held out to judge them. */
export type Half = "fit" | "held out";

/** Groups that calibrated constants are fitted on. Every other group is held out as a whole. */
export const calibratedGroups: readonly Group[] = [
  "smooth cylinder",
  "rough cylinder",
  "rectangles over length/height",
  "rounded rectangles over corner radius",
];

/** The rule, in words, for the report. */
export const splittingRule =
  "In each calibrated group the values stand in order of source, quantity, roughness, turbulence, Reynolds number and angle; the first, third, fifth and so on may be fitted, the others are held out. Groups that no constant is fitted on are held out as a whole.";

/** The half of every value of the calibrated groups, by the rule above. */
export function splitIntoHalves(sources: readonly PublishedSource[]): Map<PublishedValue, Half> {
  return splitGroups(sources, calibratedGroups);
}

/**
 * The half of every value for the stated bands, which one half gives and the other judges: every group is split by the
 * rule above, the calibrated ones as for the constants.
 */
export function splitForBands(sources: readonly PublishedSource[]): Map<PublishedValue, Half> {
  return splitGroups(sources, new Set(sources.flatMap(({ values }) => values.map(({ group }) => group))));
}

function splitGroups(sources: readonly PublishedSource[], groups: Iterable<Group>): Map<PublishedValue, Half> {
  const halves = new Map<PublishedValue, Half>();
  for (const group of groups) {
    const members = sources.flatMap(({ name, values }) =>
      values
        .filter((value) => value.group === group)
        .map((value) => ({ value, key: orderingKey(name, value.quantity) })),
    );
    members.sort((a, b) => compareKeys(a.key, b.key));
    members.forEach(({ value }, i) => {
      halves.set(value, i % 2 === 0 ? "fit" : "held out");
    });
  }
  return halves;
}

type Key = readonly (string | number)[];

function orderingKey(source: string, quantity: Quantity): Key {
  if (!("section" in quantity)) return [source, quantity.kind];
  return [
    source,
    quantity.kind,
    sectionLabel(quantity.section),
    quantity.sandGrainRoughnessRatio,
    quantity.turbulenceIntensity,
    "reynolds" in quantity ? quantity.reynolds : quantity.reynoldsFrom,
    "angleDegrees" in quantity ? quantity.angleDegrees : 0,
  ];
}

/** Text by code unit, not by locale, so that the order is the same on every machine. */
function compareKeys(a: Key, b: Key): number {
  for (let i = 0; i < Math.min(a.length, b.length); i++) {
    if (a[i] < b[i]) return -1;
    if (a[i] > b[i]) return 1;
  }
  return a.length - b.length;
}
