import { describe, expect, it } from "vitest";
import { freshWater } from "../../shared/engine/fluid/freshWater";
import { seaWater, seaWaterDensity } from "../../shared/engine/fluid/seaWater";

function seaWaterAt(temperature: number, salinity: number) {
  const water = seaWater(temperature, salinity);
  if (!water.ok) throw new Error(water.problem.message);
  return water.value;
}

describe("seaWaterDensity against the check values of Fofonoff & Millard (1983), UNESCO 44, p. 19, at zero pressure", () => {
  it.each([
    [5, 0, 999.96675],
    [25, 0, 997.04796],
    [5, 35, 1027.67547],
    [25, 35, 1023.34306],
  ])("%d °C (IPTS-68) and practical salinity %d give %d kg/m³", (temperature, salinity, published) => {
    expect(Math.abs(seaWaterDensity(temperature, salinity) - published)).toBeLessThan(5.1e-6);
  });
});

// ITTC Recommended Procedure 7.5-02-01-03 (2011), standard sea water of 35.16504 g/kg.
describe("seaWater(temperature, 35.16504 g/kg) against the ITTC (2011) table", () => {
  it.each([
    [1, 1028.0941],
    [4, 1027.8336],
    [10, 1027.0],
    [15, 1026.021],
    [20, 1024.8103],
    [25, 1023.3873],
    [30, 1021.7694],
  ])(
    "density at %d °C is within 0.06 kg/m³ of %d kg/m³ (another equation of state, evenly 0.045 higher)",
    (temperature, published) => {
      expect(Math.abs(seaWaterAt(temperature, 35.16504).density - published)).toBeLessThan(0.06);
    },
  );

  const kinematicViscosity = [
    1.7926, 1.7341, 1.6787, 1.6262, 1.5762, 1.5288, 1.4836, 1.4406, 1.3995, 1.3604, 1.323, 1.2873, 1.2532, 1.2205,
    1.1892, 1.1592, 1.1304, 1.1028, 1.0763, 1.0508, 1.0263, 1.0027, 0.98002, 0.95818, 0.93713, 0.91683, 0.89726,
    0.87837, 0.86014, 0.84253,
  ];
  it.each(kinematicViscosity.map((published, i) => [i + 1, published]))(
    "kinematic viscosity at %d °C is within 0.15 %% of %d mm²/s",
    (temperature, published) => {
      expect(Math.abs(seaWaterAt(temperature, 35.16504).kinematicViscosity / (published * 1e-6) - 1)).toBeLessThan(
        1.5e-3,
      );
    },
  );
});

describe("seaWater(temperature, salinity)", () => {
  it.each([0, 10, 20, 30, 40])(
    "without salt at %d °C is fresh water within 0.01 kg/m³ and in viscosity",
    (temperature) => {
      const fresh = freshWater(temperature);
      if (!fresh.ok) throw new Error(fresh.problem.message);
      expect(Math.abs(seaWaterAt(temperature, 0).density - fresh.value.density)).toBeLessThan(0.01);
      expect(seaWaterAt(temperature, 0).dynamicViscosity).toBe(fresh.value.dynamicViscosity);
    },
  );

  it("is denser and more viscous with more salt", () => {
    for (let salinity = 1; salinity <= 42; salinity++) {
      expect(seaWaterAt(18, salinity).density).toBeGreaterThan(seaWaterAt(18, salinity - 1).density);
      expect(seaWaterAt(18, salinity).dynamicViscosity).toBeGreaterThan(seaWaterAt(18, salinity - 1).dynamicViscosity);
    }
  });

  it.each([
    [-1, 35, "temperatureCelsius", "0 to 40 °C"],
    [41, 35, "temperatureCelsius", "0 to 40 °C"],
    [Number.NaN, 35, "temperatureCelsius", "0 to 40 °C"],
    [15, -1, "salinityGramsPerKilogram", "0 to 42 g/kg"],
    [15, 43, "salinityGramsPerKilogram", "0 to 42 g/kg"],
    [15, Number.NaN, "salinityGramsPerKilogram", "0 to 42 g/kg"],
  ])("refuses %d °C with %d g/kg: %s must be %s", (temperature, salinity, field, range) => {
    const water = seaWater(temperature, salinity);
    expect(water).toMatchObject({ ok: false, problem: { field } });
    if (!water.ok) expect(water.problem.message).toContain(range);
  });
});
