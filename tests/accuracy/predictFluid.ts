import { dryAir } from "../../shared/engine/fluid/dryAir";
import { freshWater, waterDensity, waterViscosity } from "../../shared/engine/fluid/freshWater";
import type { FluidQuantity } from "../published/quantity";
import { notPredicted, type Prediction, predicted } from "./prediction";

const atmosphere = 101325;

/** The engine's fluid property in the quantity's unit. */
export function predictFluid(quantity: FluidQuantity): Prediction {
  switch (quantity.kind) {
    case "waterDynamicViscosity":
      return predicted(waterViscosity(quantity.temperatureKelvin, quantity.densityKgPerCubicMetre));
    case "waterDensity":
      return predicted(waterDensity(quantity.temperatureCelsius));
    case "waterKinematicViscosity": {
      const water = freshWater(quantity.temperatureCelsius);
      return water.ok ? predicted(water.value.kinematicViscosity) : notPredicted(water.problem.message);
    }
    case "airDynamicViscosity":
    case "airDensity": {
      const air = dryAir(quantity.temperatureCelsius, atmosphere);
      if (!air.ok) return notPredicted(air.problem.message);
      const { density, kinematicViscosity } = air.value;
      return predicted(quantity.kind === "airDensity" ? density : density * kinematicViscosity);
    }
  }
}
