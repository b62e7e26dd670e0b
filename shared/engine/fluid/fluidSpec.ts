/** A fluid as a person names it. Temperatures in degrees Celsius, as on a pool's notice board. */
export type FluidSpec =
  | {
      /** Water without salt. */
      readonly kind: "freshWater";
      /** Its range is that of the model, see freshWater.ts. */
      readonly temperatureCelsius: number;
    }
  | {
      /** Sea water. */
      readonly kind: "seaWater";
      /** Its range is that of the model, see seaWater.ts. */
      readonly temperatureCelsius: number;
      /** Grams of salt per kilogram of sea water; the oceans have about 35. */
      readonly salinityGramsPerKilogram: number;
    }
  | {
      /** Dry air as an ideal gas. */
      readonly kind: "dryAir";
      /** Its range is that of the model, see dryAir.ts. */
      readonly temperatureCelsius: number;
      /** Absolute pressure, Pa; 101325 at sea level. */
      readonly pressurePascals: number;
    }
  | {
      /** Any other fluid, by its properties. */
      readonly kind: "userFluid";
      /** rho, kg/m^3. */
      readonly densityKilogramsPerCubicMetre: number;
      /** nu, m^2/s. */
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
