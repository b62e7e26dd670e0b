import { problem, type Result, success } from "../../result";
import { type FluidProperties, isWithin, type Range } from "./fluidSpec";

/** °C at atmospheric pressure. Kell's equation and R12-08 reach further; the engine promises liquid pool and lake water. */
export const freshWaterTemperatureRange: Range = { lowest: 0, highest: 40 };

/** IAPWS R12-08 reference constants, section 2.2: K, kg/m^3, Pa s. */
const referenceTemperature = 647.096;
const referenceDensity = 322.0;
const referenceViscosity = 1e-6;

/** H_i of the dilute-gas factor, IAPWS R12-08 table 1. */
const diluteGas = [1.67752, 2.20462, 0.6366564, -0.241605] as const;

/** H_ij of the finite-density factor, IAPWS R12-08 table 2: row j (power of density), column i (power of 1/T). */
const finiteDensity = [
  [5.20094e-1, 8.50895e-2, -1.08374, -2.89555e-1, 0, 0],
  [2.22531e-1, 9.99115e-1, 1.88797, 1.26613, 0, 1.20573e-1],
  [-2.81378e-1, -9.06851e-1, -7.72479e-1, -4.89837e-1, -2.5704e-1, 0],
  [1.61913e-1, 2.57399e-1, 0, 0, 0, 0],
  [-3.25372e-2, 0, 0, 6.98452e-2, 0, 0],
  [0, 0, 0, 0, 8.72102e-3, 0],
  [0, 0, 0, -4.35673e-3, 0, -5.93264e-4],
] as const;

/**
 * Dynamic viscosity of water, Pa s, without the critical enhancement (which is 1 far from the critical point).
 * Source: IAPWS R12-08 (2008), eqs. 10-12 with mu2 = 1.
 * @param temperatureKelvin above 0
 * @param density kg/m^3, above 0
 */
export function waterViscosity(temperatureKelvin: number, density: number): number {
  const T = temperatureKelvin / referenceTemperature;
  const rho = density / referenceDensity;
  const mu0 = (100 * Math.sqrt(T)) / diluteGas.reduce((sum, H, i) => sum + H / T ** i, 0);
  let exponent = 0;
  finiteDensity.forEach((row, j) => {
    row.forEach((H, i) => {
      exponent += H * (1 / T - 1) ** i * (rho - 1) ** j;
    });
  });
  return referenceViscosity * mu0 * Math.exp(rho * exponent);
}

/**
 * Density of air-free water at one atmosphere, kg/m^3.
 * Source: Kell (1975), J. Chem. Eng. Data 20, 97-105, eq. 16; its IPTS-68 temperature differs by at most 0.01 K here.
 * @param temperatureCelsius 0 to 150
 */
export function waterDensity(temperatureCelsius: number): number {
  const t = temperatureCelsius;
  const numerator =
    999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
  return numerator / (1 + 16.87985e-3 * t);
}

/**
 * Fresh water at atmospheric pressure.
 * @param temperatureCelsius 0 to 40; outside it the result is a problem
 */
export function freshWater(temperatureCelsius: number): Result<FluidProperties> {
  const { lowest, highest } = freshWaterTemperatureRange;
  if (!isWithin(temperatureCelsius, freshWaterTemperatureRange)) {
    return problem(
      "fluid-temperature",
      `fresh water temperature is ${temperatureCelsius} °C; it must be ${lowest} to ${highest} °C`,
      "temperatureCelsius",
    );
  }
  const density = waterDensity(temperatureCelsius);
  const dynamicViscosity = waterViscosity(temperatureCelsius + 273.15, density);
  return success({
    name: `fresh water at ${temperatureCelsius} °C`,
    density,
    kinematicViscosity: dynamicViscosity / density,
    dynamicViscosity,
    speedOfSound: null,
    source: "density Kell (1975) eq. 16; viscosity IAPWS R12-08 (2008)",
  });
}
