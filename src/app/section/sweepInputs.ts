import type { Design } from "../../../shared/case/design";
import type { QuantityKind } from "../units/units";
import { dimension, familyTexts, withDimension } from "./sectionFields";

/** A quantity of a design that a sweep can vary. */
export interface SweepInput {
  readonly key: string;
  readonly label: string;
  readonly kind: QuantityKind;
  /** SI */
  readonly of: (design: Design) => number;
  readonly set: (design: Design, value: number) => Design;
}

/** Everything that can be swept in a design: its section's dimensions, incidence, stream and finish. */
export function sweepInputs(design: Design): SweepInput[] {
  const dimensions = familyTexts[design.section.family].fields
    .filter((field) => field.kind === "length" || field.key === "exponent")
    .map(
      (field): SweepInput => ({
        key: field.key,
        label: field.label,
        kind: field.kind,
        of: (one) => dimension(one.section, field.key),
        set: (one, value) => ({ ...one, section: withDimension(one.section, field.key, value), sectionName: null }),
      }),
    );
  return [
    ...dimensions,
    own("incidence", "Incidence", "angle"),
    ...(design.floorGap === null ? [] : [floorGapInput]),
    own("speed", "Stream speed", "speed"),
    own("turbulenceIntensity", "Turbulence intensity", "fraction"),
    own("sandGrainRoughness", "Sand-grain roughness", "length"),
  ];
}

const floorGapInput: SweepInput = {
  key: "floorGap",
  label: "Gap to the floor",
  kind: "length",
  of: ({ floorGap }) => floorGap ?? Number.NaN,
  set: (design, value) => ({ ...design, floorGap: value }),
};

function own(
  key: "incidence" | "speed" | "turbulenceIntensity" | "sandGrainRoughness",
  label: string,
  kind: QuantityKind,
): SweepInput {
  return { key, label, kind, of: (design) => design[key], set: (design, value) => ({ ...design, [key]: value }) };
}

/** A range of one input, SI. */
export interface SweepRange {
  readonly key: string;
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

export const mostSweepCount = 101;
export const mostSweepPoints = 2500;

/** Evenly spaced values, both ends met. */
export function rangeValues({ from, to, count }: SweepRange): number[] {
  return Array.from({ length: count }, (_, i) => (i === count - 1 ? to : from + ((to - from) * i) / (count - 1)));
}

export interface SweepTask {
  /** Index in the first and the second range; the second is 0 when there is only one. */
  readonly at: readonly [number, number];
  readonly design: Design;
}

/** The designs of a sweep over one or two ranges, in the order of a reader's eye. */
export function sweepTasks(design: Design, ranges: readonly SweepRange[]): SweepTask[] {
  const inputs = sweepInputs(design);
  const chosen = ranges.map((range) => {
    const input = inputs.find((one) => one.key === range.key);
    if (input === undefined) throw new RangeError(`There is no input ${range.key}.`);
    return { input, values: rangeValues(range) };
  });
  const [first, second] = chosen;
  if (first === undefined) return [];
  return first.values.flatMap((a, i) =>
    (second?.values ?? [Number.NaN]).map((b, j): SweepTask => {
      const one = first.input.set(design, a);
      return { at: [i, j], design: second === undefined ? one : second.input.set(one, b) };
    }),
  );
}
