import type { Result } from "../../result";
import { dryAir } from "./dryAir";
import type { FluidProperties, FluidSpec } from "./fluidSpec";
import { freshWater } from "./freshWater";
import { seaWater } from "./seaWater";
import { userFluid } from "./userFluid";

/** Density and viscosity of a fluid, or why they cannot be given; the problem's field is the key of the spec. */
export function resolveFluid(spec: FluidSpec): Result<FluidProperties> {
  switch (spec.kind) {
    case "freshWater":
      return freshWater(spec.temperatureCelsius);
    case "seaWater":
      return seaWater(spec.temperatureCelsius, spec.salinityGramsPerKilogram);
    case "dryAir":
      return dryAir(spec.temperatureCelsius, spec.pressurePascals);
    case "userFluid":
      return userFluid(spec.densityKilogramsPerCubicMetre, spec.kinematicViscositySquareMetresPerSecond);
  }
}
