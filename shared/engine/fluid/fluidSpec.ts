/** A fluid as a person names it. Temperatures in degrees Celsius, as on a pool's notice board. */
export type FluidSpec =
  | { readonly kind: "freshWater"; readonly temperatureCelsius: number }
  | { readonly kind: "seaWater"; readonly temperatureCelsius: number; readonly salinityGramsPerKilogram: number }
  | { readonly kind: "dryAir"; readonly temperatureCelsius: number; readonly pressurePascals: number }
  | {
      readonly kind: "userFluid";
      readonly densityKilogramsPerCubicMetre: number;
      readonly kinematicViscositySquareMetresPerSecond: number;
    };

/** The properties that the engine needs. Plain data. */
export interface FluidProperties {
  /** For tables and plots, for instance "fresh water at 27 °C". */
  readonly name: string;
  /** rho, kg/m^3. */
  readonly density: number;
  /** nu, m^2/s. */
  readonly kinematicViscosity: number;
  /** mu = rho nu, Pa s. */
  readonly dynamicViscosity: number;
  /** Speed of sound, m/s; null where the model does not give it. Below 0.3 of it a flow counts as incompressible. */
  readonly speedOfSound: number | null;
  /** Author, year and equation of density and viscosity. */
  readonly source: string;
}

/** A closed range of validity. */
export interface Range {
  readonly lowest: number;
  readonly highest: number;
}

/** True when a value lies in the range; NaN does not. */
export function isWithin(value: number, range: Range): boolean {
  return value >= range.lowest && value <= range.highest;
}
