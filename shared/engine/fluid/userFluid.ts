import { problem, type Result, success } from "../../result";
import { type FluidProperties, isWithin, type Range } from "./fluidSpec";

/** kg/m^3: from thin gases to molten metals. */
export const userDensityRange: Range = { lowest: 1e-3, highest: 3e4 };

/** m^2/s: from liquid helium's order of magnitude to honey's. */
export const userKinematicViscosityRange: Range = { lowest: 1e-9, highest: 1 };

/**
 * A fluid given by its properties.
 * @param density kg/m^3, 1e-3 to 3e4
 * @param kinematicViscosity m^2/s, 1e-9 to 1
 */
export function userFluid(density: number, kinematicViscosity: number): Result<FluidProperties> {
  if (!isWithin(density, userDensityRange)) {
    const { lowest, highest } = userDensityRange;
    return problem(
      "fluid-density",
      `density is ${density} kg/m³; it must be ${lowest} to ${highest} kg/m³`,
      "densityKilogramsPerCubicMetre",
    );
  }
  if (!isWithin(kinematicViscosity, userKinematicViscosityRange)) {
    const { lowest, highest } = userKinematicViscosityRange;
    return problem(
      "fluid-viscosity",
      `kinematic viscosity is ${kinematicViscosity} m²/s; it must be ${lowest} to ${highest} m²/s`,
      "kinematicViscositySquareMetresPerSecond",
    );
  }
  return success({
    name: `fluid of ${density} kg/m³ and ${kinematicViscosity} m²/s`,
    density,
    kinematicViscosity,
    dynamicViscosity: density * kinematicViscosity,
    speedOfSound: null,
    source: "density and viscosity given by the user",
  });
}
