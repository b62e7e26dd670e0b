import { problem, type Result, success } from "../../result";
import { type FluidProperties, isWithin, type Range } from "./fluidSpec";
import { waterDensity, waterViscosity } from "./freshWater";

/** °C at atmospheric pressure: the overlap of the density (-2 to 40) and viscosity (0 to 180) equations. */
export const seaWaterTemperatureRange: Range = { lowest: 0, highest: 40 };

/** g/kg: the density equation's limit of practical salinity 42, rounded down. */
export const seaWaterSalinityRange: Range = { lowest: 0, highest: 42 };

/** Grams of salt per kilogram for one unit of practical salinity. Source: Millero et al. (2008), Deep-Sea Res. I 55, 50-72. */
const gramsPerKilogramPerPracticalUnit = 35.16504 / 35;

/** IPTS-68 over ITS-90 temperature in °C, -2 to 40 °C. Source: Saunders (1990), WOCE Newsletter 10. */
const oldScalePerNewScale = 1.00024;

/**
 * Density of sea water at one atmosphere, kg/m^3.
 * Source: Fofonoff & Millard (1983), UNESCO Technical Papers in Marine Science 44, eqs. 13-14 (EOS-80 at zero
 * pressure; the one-atmosphere equation of Millero & Poisson 1981).
 * @param temperatureIpts68 °C on the IPTS-68 scale, -2 to 40
 * @param practicalSalinity PSS-78, 0 to 42
 */
export function seaWaterDensity(temperatureIpts68: number, practicalSalinity: number): number {
  const t = temperatureIpts68;
  const S = practicalSalinity;
  const pure =
    999.842594 + t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
  const linear = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
  const threeHalves = -5.72466e-3 + t * (1.0227e-4 + t * -1.6546e-6);
  return pure + S * (linear + threeHalves * Math.sqrt(S) + 4.8314e-4 * S);
}

/**
 * Viscosity of sea water over that of pure water at the same temperature.
 * Source: Sharqawy, Lienhard & Zubair (2010), Desalination and Water Treatment 16, 354-380, eq. 22 (data of Isdale et
 * al. 1972 among others); stated accuracy 1.5 %.
 * @param temperatureCelsius 0 to 180
 * @param salinity kg of salt per kg of sea water, 0 to 0.15
 */
export function seaWaterViscosityRatio(temperatureCelsius: number, salinity: number): number {
  const t = temperatureCelsius;
  const A = 1.541 + t * (1.998e-2 - 9.52e-5 * t);
  const B = 7.974 + t * (-7.561e-2 + 4.724e-4 * t);
  return 1 + salinity * (A + B * salinity);
}

/**
 * Sea water at atmospheric pressure. Viscosity: the ratio of eq. 22 on the R12-08 viscosity of pure water, to which the
 * same paper's eq. 23 is a fit, so that zero salinity gives fresh water.
 * @param temperatureCelsius 0 to 40
 * @param salinityGramsPerKilogram 0 to 42 g/kg (ocean: about 35)
 */
export function seaWater(temperatureCelsius: number, salinityGramsPerKilogram: number): Result<FluidProperties> {
  if (!isWithin(temperatureCelsius, seaWaterTemperatureRange)) {
    const { lowest, highest } = seaWaterTemperatureRange;
    return problem(
      "fluid-temperature",
      `sea water temperature is ${temperatureCelsius} °C; it must be ${lowest} to ${highest} °C`,
      "temperatureCelsius",
    );
  }
  if (!isWithin(salinityGramsPerKilogram, seaWaterSalinityRange)) {
    const { lowest, highest } = seaWaterSalinityRange;
    return problem(
      "fluid-salinity",
      `sea water salinity is ${salinityGramsPerKilogram} g/kg; it must be ${lowest} to ${highest} g/kg`,
      "salinityGramsPerKilogram",
    );
  }
  const density = seaWaterDensity(
    temperatureCelsius * oldScalePerNewScale,
    salinityGramsPerKilogram / gramsPerKilogramPerPracticalUnit,
  );
  const pureViscosity = waterViscosity(temperatureCelsius + 273.15, waterDensity(temperatureCelsius));
  const dynamicViscosity = pureViscosity * seaWaterViscosityRatio(temperatureCelsius, salinityGramsPerKilogram / 1000);
  return success({
    name: `sea water at ${temperatureCelsius} °C, ${salinityGramsPerKilogram} g/kg`,
    density,
    kinematicViscosity: dynamicViscosity / density,
    dynamicViscosity,
    speedOfSound: null,
    source:
      "density UNESCO EOS-80, Fofonoff & Millard (1983) eqs. 13-14; viscosity Sharqawy et al. (2010) eq. 22 on IAPWS R12-08",
  });
}
