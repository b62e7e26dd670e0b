import * as z from "zod";
import { dryAirPressureRange, dryAirTemperatureRange } from "../engine/fluid/dryAir";
import type { Range } from "../engine/fluid/fluidSpec";
import { freshWaterTemperatureRange } from "../engine/fluid/freshWater";
import { seaWaterSalinityRange, seaWaterTemperatureRange } from "../engine/fluid/seaWater";
import { userDensityRange, userKinematicViscosityRange } from "../engine/fluid/userFluid";
import { type Bounds, kindRule, quantity, strictRecord } from "./quantity";

function inside(range: Range, unit: string): Bounds {
  return { from: range.lowest, to: range.highest, unit };
}

const fluidKinds = "freshWater, seaWater, dryAir, userFluid";

/** The fluid of a case file; what it yields is a FluidSpec. */
export const fluidDocument = z
  .discriminatedUnion(
    "kind",
    [
      strictRecord("fresh water", {
        kind: z.literal("freshWater"),
        temperatureCelsius: quantity("Water temperature", inside(freshWaterTemperatureRange, "°C")),
      }),
      strictRecord("sea water", {
        kind: z.literal("seaWater"),
        temperatureCelsius: quantity("Water temperature", inside(seaWaterTemperatureRange, "°C")),
        salinityGramsPerKilogram: quantity("Salt per kilogram of sea water", inside(seaWaterSalinityRange, "g/kg")),
      }),
      strictRecord("dry air", {
        kind: z.literal("dryAir"),
        temperatureCelsius: quantity("Air temperature", inside(dryAirTemperatureRange, "°C")),
        pressurePascals: quantity("Air pressure", inside(dryAirPressureRange, "Pa")),
      }),
      strictRecord("a user fluid", {
        kind: z.literal("userFluid"),
        densityKilogramsPerCubicMetre: quantity("Density", inside(userDensityRange, "kg/m³")),
        kinematicViscositySquareMetresPerSecond: quantity(
          "Kinematic viscosity",
          inside(userKinematicViscosityRange, "m²/s"),
        ),
      }),
    ],
    { error: kindRule("kind", fluidKinds) },
  )
  .describe("The fluid; needed for speeds, frequencies and forces");
