import { documentProblems, valueAt } from "../../../shared/document/documentProblems";
import { type TunnelBlockDocument, tunnelBlockDocument } from "../../../shared/jobs/tunnel/tunnelBlockDocument";

/** A number, or a list of numbers, of the tunnel block with a field of its own. */
export interface TunnelField {
  /** Keys from the block down. */
  readonly path: readonly string[];
  readonly label: string;
  readonly unit: string;
  /** Shown value / the case file's. */
  readonly factor?: number;
  readonly isList?: boolean;
  /** An empty field takes the key away. */
  readonly isOptional?: boolean;
  /** What holds when the field is empty. */
  readonly otherwise?: string;
}

const field = (path: string, label: string, unit: string, more: Partial<TunnelField> = {}): TunnelField => ({
  path: path.split("."),
  label,
  unit,
  ...more,
});

export const modelFields: readonly TunnelField[] = [
  field("model.scale", "Model size / full size", "–", { isOptional: true, otherwise: "1" }),
  field("model.sandGrainRoughnessMetres", "Sand-grain roughness at full size", "µm", { factor: 1e6 }),
];

export const spanField = field("model.spanMetres", "Span at full size", "mm", { factor: 1e3 });

export const fullScaleFields: readonly TunnelField[] = [
  field("fullScale.speedsMetresPerSecond", "Speeds at full size", "m/s", { isList: true }),
  field("fullScale.turbulencePercent", "Turbulence at full size", "%"),
];

export const facilityFields: readonly TunnelField[] = [
  field("facility.slowestSpeedMetresPerSecond", "Slowest steady speed", "m/s"),
  field("facility.fastestSpeedMetresPerSecond", "Fastest speed", "m/s"),
  field("facility.testSectionAreaSquareMetres", "Area of the test section", "m²"),
  field("facility.testSectionHeightMetres", "Height of the test section", "m"),
  field("facility.turbulencePercent", "Turbulence of the tunnel", "%"),
  field("facility.balance.rangeNewtons", "Balance: range", "N"),
  field("facility.balance.resolutionNewtons", "Balance: resolution", "N"),
  field("facility.balance.noiseNewtons", "Balance: noise of one reading", "N", {
    isOptional: true,
    otherwise: "not known",
  }),
];

export const planFields: readonly TunnelField[] = [
  field("plan.speedsMetresPerSecond", "Tunnel speeds", "m/s", {
    isList: true,
    isOptional: true,
    otherwise: "spread, closer near a crisis",
  }),
  field("plan.speedCount", "How many speeds are spread", "–", { isOptional: true, otherwise: "10" }),
  field("plan.wantedHalfWidthPercent", "Wanted half-width of the mean", "%", { isOptional: true, otherwise: "2" }),
  field("plan.confidencePercent", "Confidence", "%", { isOptional: true, otherwise: "95" }),
  field("plan.mostRepeats", "Most repeats of one speed", "–", { isOptional: true, otherwise: "12" }),
  field("plan.tareRepeats", "Sweeps of the support alone", "–", { isOptional: true, otherwise: "2" }),
  field("plan.runsBetweenZeros", "Runs between zeros (randomised)", "–", { isOptional: true, otherwise: "8" }),
  field("plan.minutesPerRun", "Time of one run", "min", { isOptional: true, otherwise: "3" }),
  field("plan.seed", "Seed of the random order", "–", { isOptional: true, otherwise: "1" }),
];

export const uncertaintyFields: readonly TunnelField[] = [
  field("uncertainty.coveragePercent", "Coverage of the expanded uncertainty", "%", {
    isOptional: true,
    otherwise: "95",
  }),
  field("uncertainty.samples", "Monte Carlo samples of each point", "–", { isOptional: true, otherwise: "20000" }),
  field("uncertainty.seed", "Seed of the samples", "–", { isOptional: true, otherwise: "1" }),
];

export const wakeFields: readonly TunnelField[] = [
  field("wakeSurvey.dynamicPressurePascals", "Dynamic pressure of the stream", "Pa"),
];

export const tapFields: readonly TunnelField[] = [
  field("pressureTaps.dynamicPressurePascals", "Dynamic pressure, for pressures in Pa", "Pa", {
    isOptional: true,
    otherwise: "coefficients given",
  }),
  field("pressureTaps.reynoldsNumber", "Reynolds number of the readings", "–"),
];

/** A copy of plain data with the value at a path, through records and lists; undefined takes the key of a record away. */
export function withValue(data: unknown, [key, ...rest]: readonly string[], value: unknown): unknown {
  if (key === undefined) return value;
  if (Array.isArray(data)) return data.map((each, i) => (String(i) === key ? withValue(each, rest, value) : each));
  const record = { ...(typeof data === "object" && data !== null ? data : {}) } as Record<string, unknown>;
  const inner = withValue(record[key], rest, value);
  if (inner === undefined) delete record[key];
  else record[key] = inner;
  return record;
}

/** What a field shows. */
export function fieldText(block: TunnelBlockDocument, { path, factor = 1 }: TunnelField): string {
  const value = valueAt(block, path);
  const shown = (number: unknown) =>
    typeof number === "number" ? String(Number((number * factor).toPrecision(8))) : "";
  return Array.isArray(value) ? value.map(shown).join("; ") : shown(value);
}

export type FieldEntry =
  | { readonly ok: true; readonly block: TunnelBlockDocument }
  | { readonly ok: false; readonly message: string };

/** The block with what was typed into a field, checked as a case file is. A comma is a decimal mark; lists are set apart by semicolons or spaces. */
export function enterField(block: TunnelBlockDocument, field: TunnelField, typed: string): FieldEntry {
  const { path, label, factor = 1, isList = false, isOptional = false } = field;
  const text = typed.trim();
  if (text === "" && isOptional) return enterValue(block, path, undefined, label);
  const parts = isList ? text.split(/[;\s]+/).filter((part) => part !== "") : [text];
  const numbers = parts.map((part) => (part === "" ? Number.NaN : Number(part.replace(",", "."))));
  if (numbers.length === 0 || numbers.some((number) => !Number.isFinite(number))) {
    const rule = isList ? "numbers set apart by semicolons" : "a number";
    return { ok: false, message: `${label} is "${text}"; it must be ${rule}${isOptional ? ", or empty" : ""}.` };
  }
  const values = numbers.map((number) => Number((number / factor).toPrecision(12)));
  return enterValue(block, path, isList ? values : values[0], label);
}

/** The block with a value at a path, or the first thing that is wrong with it. */
export function enterValue(
  block: TunnelBlockDocument,
  path: readonly string[],
  value: unknown,
  label: string,
): FieldEntry {
  const changed = withValue(block, path, value);
  const parsed = tunnelBlockDocument.safeParse(changed);
  if (parsed.success) return { ok: true, block: parsed.data };
  const [first] = documentProblems(changed, parsed.error);
  return { ok: false, message: `${label}: ${first.message}.` };
}
