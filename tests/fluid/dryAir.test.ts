import { describe, expect, it } from "vitest";
import { airViscosity, dryAir } from "../../shared/engine/fluid/dryAir";

// US Standard Atmosphere (1976), table of the lower atmosphere: altitude, K, Pa, kg/m³, µPa s, mm²/s, m/s.
describe("dryAir(temperature, pressure) against the US Standard Atmosphere (1976), within 0.02 %", () => {
  it.each([
    [0, 288.15, 101325, 1.225, 17.894, 14.607, 340.294],
    [1000, 281.651, 89876, 1.1117, 17.579, 15.813, 336.435],
    [5000, 255.676, 54048, 0.73643, 16.282, 22.11, 320.545],
    [10000, 223.252, 26500, 0.41351, 14.577, 35.251, 299.532],
  ])("altitude %d m", (_altitude, temperature, pressure, density, viscosity, kinematicViscosity, speedOfSound) => {
    const air = dryAir(temperature - 273.15, pressure);
    if (!air.ok) throw new Error(air.problem.message);
    expect(Math.abs(air.value.density / density - 1)).toBeLessThan(2e-4);
    expect(Math.abs(air.value.dynamicViscosity / (viscosity * 1e-6) - 1)).toBeLessThan(2e-4);
    expect(Math.abs(air.value.kinematicViscosity / (kinematicViscosity * 1e-6) - 1)).toBeLessThan(2e-4);
    expect(Math.abs((air.value.speedOfSound ?? Number.NaN) / speedOfSound - 1)).toBeLessThan(2e-4);
  });
});

describe("airViscosity(temperature)", () => {
  it("is 17.16 µPa s at 273.15 K within 0.1 % (Sutherland's reference value in White, Viscous Fluid Flow, from memory)", () => {
    expect(Math.abs(airViscosity(273.15) / 1.716e-5 - 1)).toBeLessThan(1e-3);
  });
});

describe("dryAir refuses", () => {
  it.each([
    [-61, 101325, "temperatureCelsius", "-60 to 200 °C"],
    [Number.NaN, 101325, "temperatureCelsius", "-60 to 200 °C"],
    [20, 0, "pressurePascals", "1000 to 1000000 Pa"],
    [20, Number.NaN, "pressurePascals", "1000 to 1000000 Pa"],
  ])("%d °C with %d Pa: %s must be %s", (temperature, pressure, field, range) => {
    const air = dryAir(temperature, pressure);
    expect(air).toMatchObject({ ok: false, problem: { field } });
    if (!air.ok) expect(air.problem.message).toContain(range);
  });
});
