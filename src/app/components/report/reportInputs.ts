import { layerMethodTexts } from "../../reference/layerMethods";
import { finishPresets, presetOf, turbulencePresets } from "../../reference/presets";
import { dimension, familyTexts } from "../../section/sectionFields";
import type { Solved } from "../../section/solved";
import { quantityText, type UnitPreferences } from "../../units/units";

/** The inputs of a solved design in words, for the report. */
export function reportInputs(
  { design, fluid, solution }: Solved,
  units: UnitPreferences,
): readonly (readonly [string, string])[] {
  const { section } = design;
  const family = familyTexts[section.family];
  const finish = presetOf(finishPresets, design.sandGrainRoughness);
  const turbulence = presetOf(turbulencePresets, design.turbulenceIntensity);
  return [
    ["Section", `${family.label}${design.sectionName ? `, ${design.sectionName}` : ""}`],
    ...family.fields.map((field): readonly [string, string] => [
      field.label,
      quantityText(dimension(section, field.key), field.kind, units),
    ]),
    ["Incidence, nose up", quantityText(design.incidence, "angle", units)],
    ["Floor", floorText(design.floorGap, units)],
    ["Fluid", fluid.name],
    ["Density", `${fluid.density.toPrecision(5)} kg/m³`],
    ["Kinematic viscosity", `${fluid.kinematicViscosity.toPrecision(4)} m²/s`],
    ["Stream speed", quantityText(design.speed, "speed", units)],
    [
      "Turbulence intensity",
      `${quantityText(design.turbulenceIntensity, "fraction", units)}${turbulence ? ` (${turbulence.label})` : ""}`,
    ],
    [
      "Sand-grain roughness",
      `${quantityText(design.sandGrainRoughness, "length", units)}${finish ? ` (${finish.label})` : ""}`,
    ],
    ...design.trips.map((trip, i): readonly [string, string] => [
      `Trip ${i + 1}, ${trip.side}`,
      `${quantityText(trip.height, "length", units)} high, ${quantityText(trip.arc, "length", units)} from the nose`,
    ]),
    ["Boundary layers", layerMethodTexts[design.layerMethod ?? "integral"].label],
    ["Panels", String(solution.nodes.count)],
  ];
}

function floorText(gap: number | null, units: UnitPreferences): string {
  if (gap === null) return "none";
  return gap === 0 ? "the section lies on it" : `${quantityText(gap, "length", units)} below the section`;
}
