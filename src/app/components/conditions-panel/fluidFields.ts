import { dryAirPressureRange, dryAirTemperatureRange } from "../../../../shared/engine/fluid/dryAir";
import type { FluidSpec, Range } from "../../../../shared/engine/fluid/fluidSpec";
import { freshWaterTemperatureRange } from "../../../../shared/engine/fluid/freshWater";
import { seaWaterSalinityRange, seaWaterTemperatureRange } from "../../../../shared/engine/fluid/seaWater";
import { userDensityRange, userKinematicViscosityRange } from "../../../../shared/engine/fluid/userFluid";
import type { QuantityKind } from "../../units/units";

export const fluidLabels: Readonly<Record<FluidSpec["kind"], string>> = {
  freshWater: "Fresh water",
  seaWater: "Sea water",
  dryAir: "Dry air",
  userFluid: "Own fluid",
};

export interface FluidField {
  /** Key of the fluid's specification. */
  readonly key: string;
  readonly label: string;
  readonly kind: QuantityKind;
  readonly value: number;
  readonly range: Range;
  readonly hint: string;
}

/** A fluid of a kind at ordinary values. */
export function fluidOfKind(kind: FluidSpec["kind"]): FluidSpec {
  switch (kind) {
    case "freshWater":
      return { kind, temperatureCelsius: 27 };
    case "seaWater":
      return { kind, temperatureCelsius: 20, salinityGramsPerKilogram: 35 };
    case "dryAir":
      return { kind, temperatureCelsius: 20, pressurePascals: 101325 };
    case "userFluid":
      return { kind, densityKilogramsPerCubicMetre: 1000, kinematicViscositySquareMetresPerSecond: 1e-6 };
  }
}

/** The fields of a fluid. */
export function fluidFields(fluid: FluidSpec): FluidField[] {
  const temperature = (value: number, range: Range): FluidField => ({
    key: "temperatureCelsius",
    label: "Temperature",
    kind: "temperature",
    value,
    range,
    hint: "",
  });
  switch (fluid.kind) {
    case "freshWater":
      return [temperature(fluid.temperatureCelsius, freshWaterTemperatureRange)];
    case "seaWater":
      return [
        temperature(fluid.temperatureCelsius, seaWaterTemperatureRange),
        {
          key: "salinityGramsPerKilogram",
          label: "Salinity, g/kg",
          kind: "number",
          value: fluid.salinityGramsPerKilogram,
          range: seaWaterSalinityRange,
          hint: "",
        },
      ];
    case "dryAir":
      return [
        temperature(fluid.temperatureCelsius, dryAirTemperatureRange),
        {
          key: "pressurePascals",
          label: "Pressure",
          kind: "pressure",
          value: fluid.pressurePascals,
          range: dryAirPressureRange,
          hint: "",
        },
      ];
    case "userFluid":
      return [
        {
          key: "densityKilogramsPerCubicMetre",
          label: "Density, kg/m³",
          kind: "number",
          value: fluid.densityKilogramsPerCubicMetre,
          range: userDensityRange,
          hint: "",
        },
        {
          key: "kinematicViscositySquareMetresPerSecond",
          label: "Kinematic viscosity, m²/s",
          kind: "number",
          value: fluid.kinematicViscositySquareMetresPerSecond,
          range: userKinematicViscosityRange,
          hint: "",
        },
      ];
  }
}
