import type { Design } from "../../../shared/case/design";
import { quantityText, type UnitPreferences } from "../units/units";
import { familyTexts } from "./sectionFields";

/** What the groups of inputs are set to, each in a few words. */
export function inputSummaries(design: Design, units: UnitPreferences) {
  const { fluid, trips, floorGap } = design;
  const fluids = { freshWater: "fresh water", seaWater: "sea water", dryAir: "air", userFluid: "own fluid" } as const;
  const temperature =
    "temperatureCelsius" in fluid ? ` ${quantityText(fluid.temperatureCelsius, "temperature", units)}` : "";
  const floor = floorGap === null ? "" : floorGap === 0 ? ", on the floor" : ", over a floor";
  return {
    shape: `${familyTexts[design.section.family].label.toLowerCase()}${floor}`,
    stream: `${fluids[fluid.kind]}${temperature}`,
    turbulence: quantityText(design.turbulenceIntensity, "fraction", units, 2),
    finish: `ks ${quantityText(design.sandGrainRoughness, "length", units, 2)}`,
    trips: trips.length === 0 ? "none" : String(trips.length),
    layers: (design.layerMethod ?? "integral") === "integral" ? "own method" : "textbook",
  } as const;
}
