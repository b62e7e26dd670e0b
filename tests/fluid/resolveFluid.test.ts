import { describe, expect, it } from "vitest";
import type { FluidSpec } from "../../shared/engine/fluid/fluidSpec";
import { resolveFluid } from "../../shared/engine/fluid/resolveFluid";

const specs: FluidSpec[] = [
  { kind: "freshWater", temperatureCelsius: 27 },
  { kind: "seaWater", temperatureCelsius: 15, salinityGramsPerKilogram: 35 },
  { kind: "dryAir", temperatureCelsius: 20, pressurePascals: 101325 },
  { kind: "userFluid", densityKilogramsPerCubicMetre: 860, kinematicViscositySquareMetresPerSecond: 3.2e-5 },
];

describe("resolveFluid(spec)", () => {
  it.each(specs)("of $kind has dynamic viscosity = density x kinematic viscosity, a name and a source", (spec) => {
    const fluid = resolveFluid(spec);
    if (!fluid.ok) throw new Error(fluid.problem.message);
    const { density, kinematicViscosity, dynamicViscosity, name, source } = fluid.value;
    expect(dynamicViscosity / (density * kinematicViscosity)).toBeCloseTo(1, 12);
    expect(name).not.toBe("");
    expect(source).not.toBe("");
  });

  it("of air at 30 m/s and pool water at 27 °C at puck speed meet at one Reynolds number (common practice, no source)", () => {
    const [air, pool] = [specs[2], specs[0]].map((spec) => {
      const fluid = resolveFluid(spec);
      if (!fluid.ok) throw new Error(fluid.problem.message);
      return fluid.value.kinematicViscosity;
    });
    const speedInWater = (30 * pool) / air;
    expect(speedInWater).toBeGreaterThan(1);
    expect(speedInWater).toBeLessThan(2);
  });

  it.each([
    [0, 1e-6, "densityKilogramsPerCubicMetre"],
    [Number.NaN, 1e-6, "densityKilogramsPerCubicMetre"],
    [1000, 0, "kinematicViscositySquareMetresPerSecond"],
    [1000, -1e-6, "kinematicViscositySquareMetresPerSecond"],
  ])("refuses a user fluid of %d kg/m³ and %d m²/s, naming %s", (density, viscosity, field) => {
    const fluid = resolveFluid({
      kind: "userFluid",
      densityKilogramsPerCubicMetre: density,
      kinematicViscositySquareMetresPerSecond: viscosity,
    });
    expect(fluid).toMatchObject({ ok: false, problem: { field } });
  });
});
