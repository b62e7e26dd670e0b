import type { FluidProperties, FluidSpec } from "../../engine/fluid/fluidSpec";
import { resolveFluid } from "../../engine/fluid/resolveFluid";
import { fractionOf } from "../../numerics/degreesAndPercent";
import { problem, type Result, success } from "../../result";
import { moistAirDensity } from "./moistAir";

/** What a row tells of the fluid; null where it does not. */
export interface FluidReading {
  /** °C. */
  readonly temperature: number | null;
  /** Pa, absolute. */
  readonly staticPressure: number | null;
  /** %. */
  readonly humidity: number | null;
}

/**
 * The tunnel's fluid at one reading; what the reading does not tell is taken from the tunnel's own fluid. With a humidity
 * air has the density of moist air; its viscosity stays that of dry air, which is right to 0.5 % below 30 °C (common
 * practice, no source).
 */
export function fluidAtReading(spec: FluidSpec, reading: FluidReading): Result<FluidProperties> {
  switch (spec.kind) {
    case "freshWater":
    case "seaWater":
      return resolveFluid({ ...spec, temperatureCelsius: reading.temperature ?? spec.temperatureCelsius });
    case "userFluid":
      return resolveFluid(spec);
    case "dryAir": {
      const temperatureCelsius = reading.temperature ?? spec.temperatureCelsius;
      const pressurePascals = reading.staticPressure ?? spec.pressurePascals;
      const dry = resolveFluid({ ...spec, temperatureCelsius, pressurePascals });
      if (!dry.ok || reading.humidity === null) return dry;
      const density = moistAirDensity(temperatureCelsius, pressurePascals, fractionOf(reading.humidity));
      if (!(density > 0))
        return problem(
          "fluid-humidity",
          `air of ${reading.humidity} % humidity at ${temperatureCelsius} °C has no density`,
        );
      const { dynamicViscosity } = dry.value;
      return success({
        ...dry.value,
        name: `air at ${temperatureCelsius} °C, ${pressurePascals} Pa, ${reading.humidity} % humidity`,
        density,
        kinematicViscosity: dynamicViscosity / density,
        source: `${dry.value.source}; moist density CIPM-2007`,
      });
    }
  }
}
