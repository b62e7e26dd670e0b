import { describe, expect, it } from "vitest";
import { freshWater, waterDensity, waterViscosity } from "../../shared/engine/fluid/freshWater";

describe("waterViscosity(temperature, density) against IAPWS R12-08 (2008), table 4, to the last printed digit", () => {
  it.each([
    [298.15, 998, 889.7351],
    [298.15, 1200, 1437.649467],
    [373.15, 1000, 307.883622],
    [433.15, 1, 14.538324],
    [433.15, 1000, 217.685358],
    [873.15, 1, 32.619287],
    [873.15, 100, 35.802262],
    [873.15, 600, 77.430195],
    [1173.15, 1, 44.217245],
    [1173.15, 100, 47.640433],
    [1173.15, 400, 64.154608],
  ])("%d K and %d kg/m³ give %d µPa s", (temperature, density, published) => {
    expect(Math.abs(waterViscosity(temperature, density) * 1e6 - published)).toBeLessThan(5.1e-7);
  });
});

describe("waterDensity(temperature)", () => {
  // Haar, Gallagher & Kell (1984), NBS/NRC Steam Tables, at 1 bar; another equation of state, read to 0.01 kg/m³.
  it.each([
    [15, 999.14],
    [20, 998.23],
    [25, 997.06],
    [30, 995.65],
    [35, 994.03],
  ])("at %d °C is within 0.05 kg/m³ of the NBS/NRC Steam Tables (1984), %d kg/m³", (temperature, published) => {
    expect(Math.abs(waterDensity(temperature) - published)).toBeLessThan(0.05);
  });

  // Kell (1975), table of densities on the 1968 scale, kg/m³ (from memory).
  it.each([
    [0, 999.8396],
    [4, 999.972],
    [20, 998.2041],
    [25, 997.0449],
    [40, 992.2152],
  ])("at %d °C is within 0.001 kg/m³ of Kell (1975), %d kg/m³", (temperature, published) => {
    expect(Math.abs(waterDensity(temperature) - published)).toBeLessThan(1e-3);
  });
});

describe("freshWater(temperature)", () => {
  // Korson, Drost-Hansen & Millero (1969), J. Phys. Chem. 73, 34-39, mPa s.
  it.each([
    [15, 1.1382],
    [20, 1.002],
    [25, 0.8903],
    [30, 0.7975],
    [35, 0.7195],
  ])(
    "at %d °C has the viscosity measured by Korson et al. (1969), %d mPa s, within 0.1 %%",
    (temperature, published) => {
      const water = freshWater(temperature);
      if (!water.ok) throw new Error(water.problem.message);
      expect(Math.abs(water.value.dynamicViscosity / (published * 1e-3) - 1)).toBeLessThan(1e-3);
      expect(water.value.kinematicViscosity).toBeCloseTo(water.value.dynamicViscosity / water.value.density, 15);
    },
  );

  it.each([-0.01, 40.01, Number.NaN, Number.POSITIVE_INFINITY])("refuses %d °C and names the range", (temperature) => {
    const water = freshWater(temperature);
    expect(water).toMatchObject({ ok: false, problem: { field: "temperatureCelsius" } });
    if (!water.ok) expect(water.problem.message).toContain("0 to 40 °C");
  });
});
