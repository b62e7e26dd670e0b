import { experimentOf, type Group, type PublishedSource, type PublishedValue } from "../published/publishedValue";
import { groupBy } from "./groupBy";

/**
 * Which part a value is in: one that calibrated constants may be fitted on, one that is held out to judge them, or a
 * design code, which is an envelope and neither fits nor judges a mean.
 */
export type Part = "fit" | "held out" | "design code";

/** The two halves that experiments are dealt to. */
export type Half = Exclude<Part, "design code">;

/** Groups that calibrated constants are fitted on. Every other group is held out as a whole. */
export const calibratedGroups: readonly Group[] = [
  "smooth cylinder",
  "rough cylinder",
  "rectangles over length/height",
  "rounded rectangles over corner radius",
];

/** The rule, in words, for the report. */
export const splittingRule =
  "Whole experiments are fitted on or held out, never a part of one: the experiments of the calibrated groups, in falling order of their counted values, each go to the half where every group's kinds of quantity are then shared most evenly. Design codes are shown as a part of their own, since an envelope is no mean. Groups that no constant is fitted on are held out as a whole.";

/** The part of every counted value of the calibrated groups, by the rule above. */
export function splitForConstants(sources: readonly PublishedSource[]): Map<PublishedValue, Part> {
  const calibrated = new Set<Group>(calibratedGroups);
  const counted = ({ group, shownOnly }: PublishedValue) => shownOnly === undefined && calibrated.has(group);
  const measured = sources.filter(({ nature }) => nature !== "design code");
  const parts = new Map<PublishedValue, Part>(dealExperiments(measured, counted));
  for (const { nature, values } of sources) {
    if (nature === "design code") for (const value of values.filter(counted)) parts.set(value, "design code");
  }
  return parts;
}

/**
 * The half of every counted value for the stated bands, which one half gives and the other judges: experiments of all
 * groups, design codes among them.
 */
export function splitForBands(sources: readonly PublishedSource[]): Map<PublishedValue, Half> {
  return dealExperiments(sources, ({ shownOnly }) => shownOnly === undefined);
}

function dealExperiments(
  sources: readonly PublishedSource[],
  counts: (value: PublishedValue) => boolean,
): Map<PublishedValue, Half> {
  const experiments = [...groupBy(sources, experimentOf)]
    .map(([name, members]) => ({ name, values: members.flatMap(({ values }) => values.filter(counts)) }))
    .filter(({ values }) => values.length > 0)
    .sort((a, b) => b.values.length - a.values.length || (a.name < b.name ? -1 : 1));
  const totals = countKinds(experiments.flatMap(({ values }) => values));
  /** Values of each kind in the fitting half less those held out. */
  const surplus = new Map<string, number>();
  const halves = new Map<PublishedValue, Half>();
  for (const { values } of experiments) {
    const own = countKinds(values);
    const imbalance = (sign: 1 | -1) =>
      [...own].reduce((sum, [kind, n]) => sum + Math.abs((surplus.get(kind) ?? 0) + sign * n) / totals.get(kind)!, 0);
    const half: Half = imbalance(1) <= imbalance(-1) ? "fit" : "held out";
    const sign = half === "fit" ? 1 : -1;
    for (const [kind, n] of own) surplus.set(kind, (surplus.get(kind) ?? 0) + sign * n);
    for (const value of values) halves.set(value, half);
  }
  return halves;
}

function countKinds(values: readonly PublishedValue[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { group, quantity } of values) {
    const kind = `${group}|${quantity.kind}`;
    counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  return counts;
}
