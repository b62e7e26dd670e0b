import { dimensionKeys, dimensionTable } from "../../../shared/jobs/puck/body/puckDimension";
import { finishPresets, presetOf } from "../reference/presets";
import { quantityText, type UnitPreferences } from "../units/units";
import type { MeasuredPuck } from "./puckAnswers";
import { coreKinds, edgeKinds, faceKinds, fieldOf, type PartKind, rimKinds, wholeFields } from "./puckFields";

const orientationTexts = { upright: "upright", flat: "lying flat", faceOn: "face-on" } as const;

/** The inputs of a puck that could be measured, in words, for the report. */
export function puckReportInputs(
  { inputs, fluid }: MeasuredPuck,
  units: UnitPreferences,
): readonly (readonly [string, string])[] {
  const { spec, sandGrainRoughness } = inputs.candidate;
  const { play, rules, tolerances } = inputs;
  const part = (kind: PartKind) =>
    [
      kind.label,
      ...kind.fields.map((field) => `${field.label} ${quantityText(fieldOf(spec, field), field.kind, units)}`),
    ].join(", ");
  const preset = presetOf(finishPresets, sandGrainRoughness);
  const speeds = play.speeds.map((speed) => quantityText(speed, "speed", units)).join(", ");
  const shares = Object.entries(orientationTexts).map(
    ([key, label]) => `${label} ${play.shares[key as keyof typeof orientationTexts]}`,
  );
  const made = dimensionKeys.flatMap((key) => {
    const tolerance = tolerances[key];
    return tolerance === undefined
      ? []
      : [`${dimensionTable[key].label} ± ${quantityText(tolerance, "length", units)}`];
  });
  return [
    ...wholeFields.map((field): [string, string] => [
      field.label,
      quantityText(fieldOf(spec, field), field.kind, units),
    ]),
    ["Edge", part(edgeKinds[spec.edge.kind])],
    ["Faces", part(faceKinds[spec.face.kind])],
    ["Rim", part(rimKinds[spec.rim.kind])],
    ["Core", spec.core.kind === "none" ? "none" : `${spec.core.material}, ${part(coreKinds[spec.core.kind])}`],
    ["Coat", spec.coatMaterial],
    ["Finish, ks", `${quantityText(sandGrainRoughness, "length", units)}${preset ? ` (${preset.label})` : ""}`],
    ["Baseline", inputs.baseline.spec.name],
    ["Fluid", `${fluid.name}, ${fluid.density.toPrecision(5)} kg/m³, ${fluid.kinematicViscosity.toPrecision(4)} m²/s`],
    ["Speeds", speeds],
    ["Turbulence", play.turbulenceIntensities.map((one) => quantityText(one, "fraction", units)).join(", ")],
    ["Shares of play", shares.join(", ")],
    ["Sliding friction", `${play.frictionCoefficient} ± ${play.frictionSpread}`],
    ["Rules", rules === null ? "none" : `${rules.name}, ${rules.date}`],
    ["Making tolerances", made.length === 0 ? "none given" : made.join(", ")],
  ];
}
