import { problem, type Result, success } from "../../result";
import { type FluidProperties, isWithin, type Range } from "./fluidSpec";

/** °C: well inside the range of Sutherland's formula (about 100 K to 1900 K) and of a perfect gas. */
export const dryAirTemperatureRange: Range = { lowest: -60, highest: 200 };

/** Pa: from the stratosphere to a pressurised tunnel; the perfect-gas density is within 1 % in it. */
export const dryAirPressureRange: Range = { lowest: 1e3, highest: 1e6 };

/** J/(kg K): 8314.32 / 28.9644. Source: US Standard Atmosphere (1976), tables 2 and 3. */
const gasConstant = 8314.32 / 28.9644;

/** Ratio of specific heats. Source: US Standard Atmosphere (1976), eq. 50. */
const heatCapacityRatio = 1.4;

/**
 * Dynamic viscosity of dry air, Pa s. Source: Sutherland (1893) with the constants of the US Standard Atmosphere (1976), eq. 51.
 * @param temperatureKelvin 100 to 1900
 */
export function airViscosity(temperatureKelvin: number): number {
  return (1.458e-6 * temperatureKelvin ** 1.5) / (temperatureKelvin + 110.4);
}

/**
 * Dry air as a perfect gas.
 * @param temperatureCelsius -60 to 200
 * @param pressurePascals 1e3 to 1e6 (sea level: about 101325)
 */
export function dryAir(temperatureCelsius: number, pressurePascals: number): Result<FluidProperties> {
  if (!isWithin(temperatureCelsius, dryAirTemperatureRange)) {
    const { lowest, highest } = dryAirTemperatureRange;
    return problem(
      "fluid-temperature",
      `air temperature is ${temperatureCelsius} °C; it must be ${lowest} to ${highest} °C`,
      "temperatureCelsius",
    );
  }
  if (!isWithin(pressurePascals, dryAirPressureRange)) {
    const { lowest, highest } = dryAirPressureRange;
    return problem(
      "fluid-pressure",
      `air pressure is ${pressurePascals} Pa; it must be ${lowest} to ${highest} Pa`,
      "pressurePascals",
    );
  }
  const temperatureKelvin = temperatureCelsius + 273.15;
  const density = pressurePascals / (gasConstant * temperatureKelvin);
  const dynamicViscosity = airViscosity(temperatureKelvin);
  return success({
    name: `dry air at ${temperatureCelsius} °C, ${pressurePascals} Pa`,
    density,
    kinematicViscosity: dynamicViscosity / density,
    dynamicViscosity,
    speedOfSound: Math.sqrt(heatCapacityRatio * gasConstant * temperatureKelvin),
    source: "density perfect gas and viscosity Sutherland (1893), constants of the US Standard Atmosphere (1976)",
  });
}
