import type { Bounds } from "../../../shared/document/quantity";
import { largestBlockageRatio } from "../../../shared/jobs/evidence/confinedDrag";
import type { MeasuredSetInputs } from "./compareInputs";

/** A number of a set-up that may be left open: an empty field is "not stated". */
export interface SetupField {
  readonly key: "turbulencePercent" | "sandGrainRoughnessMetres" | "blockageRatio" | "lengthToWidth";
  readonly label: string;
  readonly unit: string;
  /** Shown value / the case file's. */
  readonly factor: number;
  /** Of the shown value. */
  readonly bounds: Bounds;
}

const blockageField: SetupField = {
  key: "blockageRatio",
  label: "Blockage, width / tunnel height",
  unit: "%",
  factor: 100,
  bounds: { from: 0, to: 100 * largestBlockageRatio, unit: "%" },
};

const setupFields: readonly SetupField[] = [
  {
    key: "turbulencePercent",
    label: "Turbulence of the stream",
    unit: "%",
    factor: 1,
    bounds: { from: 0, to: 20, unit: "%" },
  },
  {
    key: "sandGrainRoughnessMetres",
    label: "Sand-grain roughness",
    unit: "µm",
    factor: 1e6,
    bounds: { from: 0, to: 5e6, unit: "µm" },
  },
  blockageField,
  {
    key: "lengthToWidth",
    label: "Length of the model / width",
    unit: "–",
    factor: 1,
    bounds: { from: 0.1, to: 1000, unit: "" },
  },
];

const puckFields: readonly SetupField[] = [
  ...setupFields.slice(0, 2),
  { ...blockageField, label: "Blockage, frontal area / area of the test section" },
];

/** The fields of a set; a puck has its own ends. */
export function setupFieldsOf({ puck }: MeasuredSetInputs): readonly SetupField[] {
  return puck === undefined ? setupFields : puckFields;
}

/** What a field shows: the set's own value, or nothing. A ratio of roughness is shown by its own field's hint. */
export function fieldText(set: MeasuredSetInputs, { key, factor }: SetupField): string {
  const value = set[key];
  return value === undefined ? "" : String(Number((value * factor).toPrecision(8)));
}

export type FieldReading =
  | { readonly ok: true; readonly set: MeasuredSetInputs }
  | { readonly ok: false; readonly message: string };

/** The set with a field's text in place: empty takes the value away. */
export function withField(set: MeasuredSetInputs, field: SetupField, text: string): FieldReading {
  const { key, label, factor, bounds } = field;
  const { [key]: _old, ...others } = set;
  const { sandGrainRoughnessRatio: _ratio, ...withoutRatio } = others;
  const rest = key === "sandGrainRoughnessMetres" ? withoutRatio : others;
  const typed = text.trim().replace(",", ".");
  if (typed === "") return { ok: true, set: rest as MeasuredSetInputs };
  const value = Number(typed);
  const { from = 0, to, unit } = bounds;
  if (!(value >= from && value <= to)) {
    const range = `${from} to ${to}${unit === "" ? "" : ` ${unit}`}`;
    return { ok: false, message: `${label} is "${text.trim()}"; it must be a number from ${range}, or empty.` };
  }
  return { ok: true, set: { ...(rest as MeasuredSetInputs), [key]: Number((value / factor).toPrecision(12)) } };
}
