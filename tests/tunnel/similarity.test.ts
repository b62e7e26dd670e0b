import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dryAir } from "../../shared/engine/fluid/dryAir";
import { freshWater } from "../../shared/engine/fluid/freshWater";
import { moistAirDensity } from "../../shared/jobs/tunnel/moistAir";
import type { PredictedDrag } from "../../shared/jobs/tunnel/predictedDrag";
import { equalReynoldsSpeedRatio, similarity } from "../../shared/jobs/tunnel/similarity";
import { circleModel, facilityOf, value } from "./tunnelSamples";

const pool = value(freshWater(27));
const air = value(dryAir(20, 101325));

function predicted(rising: number, falling: number): PredictedDrag {
  const band = { low: 0.8, expected: 1, high: 1.2 };
  return {
    turbulencePercent: 1,
    points: [1e4, 1e6].map((reynolds) => ({
      reynolds,
      direction: "rising" as const,
      dragCoefficient: band,
      regime: null,
    })),
    crises: [{ of: "circle", rising, falling, factor: 1.2 }],
    notes: [],
  };
}

function similar(speeds: readonly number[], full: PredictedDrag, tunnel: PredictedDrag, change = {}) {
  const fullScale = { fluid: pool, speeds, turbulenceIntensity: 0.01 };
  return similarity(circleModel(), fullScale, { ...facilityOf(air), ...change }, full, tunnel);
}

describe("equalReynoldsSpeedRatio(tunnel, full, scale)", () => {
  it("common practice, no source: about 2 m/s in a pool at 27 °C and about 30 m/s in air are the same flow, 20 %", () => {
    const ratio = equalReynoldsSpeedRatio(air.kinematicViscosity, pool.kinematicViscosity, 1);
    expect(Math.abs((2 * ratio) / 30 - 1)).toBeLessThan(0.2);
    // The exact answer for the two fluids: 35.3 m/s at 2 m/s, and 30 m/s at 1.7 m/s.
    expect(2 * ratio).toBeCloseTo((2 * 1.506e-5) / 0.8539e-6, 1);
  });

  it("keeps Re equal for any scale, exact", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        (scale, speed) => {
          const ratio = equalReynoldsSpeedRatio(air.kinematicViscosity, pool.kinematicViscosity, scale);
          const full = (speed * 0.08) / pool.kinematicViscosity;
          const tunnel = (speed * ratio * 0.08 * scale) / air.kinematicViscosity;
          expect(tunnel / full).toBeCloseTo(1, 12);
        },
      ),
    );
  });
});

describe("similarity(model, fullScale, facility, predictions)", () => {
  const quiet = predicted(5e5, 4e5);

  it("scales roughness with the model, forces with q and the area, and the Mach number with the speed of sound", () => {
    const found = similar([1], quiet, quiet);
    expect(found.modelSandGrainRoughnessMetres).toBeCloseTo(1e-5, 12);
    const [row] = found.rows;
    expect(row.expectedForceNewtons?.expected).toBeCloseTo(
      0.5 * air.density * row.tunnelSpeedMetresPerSecond ** 2 * 0.08 * 0.4,
      9,
    );
    expect(row.mach).toBeCloseTo(row.tunnelSpeedMetresPerSecond / 343.2, 3);
    expect(row.warnings).toEqual([]);
  });

  it("stops at the tunnel's fastest speed and at Mach 0.3, and says so", () => {
    expect(similar([4], quiet, quiet, { fastestSpeed: 40 }).rows[0].warnings.join()).toContain(
      "the tunnel ends at 40 m/s",
    );
    const [fast] = similar([9], quiet, quiet, { fastestSpeed: 200 }).rows;
    expect(fast.mach).toBeCloseTo(0.3, 6);
    expect(fast.warnings.join()).toContain("above the limit of 0.3");
    expect(fast.warnings.join()).toContain("may lie on either side");
  });

  it("holds the force against the range and the steps of the balance", () => {
    const small = { balance: { range: 1, resolution: 0.5, noise: null } };
    const warnings = similar([2], quiet, quiet, small).rows[0].warnings.join(" ");
    expect(warnings).toContain("the balance ends at 1 N");
    expect(warnings).toContain("less than 100 steps");
  });

  it("warns where the crisis lies between the two flows, near it, and not far from it", () => {
    const reynolds = (2 * 0.08) / pool.kinematicViscosity;
    const between = similar([2], predicted(0.7 * reynolds, 0.6 * reynolds), predicted(1.5 * reynolds, 1.4 * reynolds));
    expect(between.rows[0].warnings.join()).toContain("at full size above it, in the tunnel below it");
    const near = predicted(0.95 * reynolds, 0.9 * reynolds);
    expect(similar([2], near, near).rows[0].warnings.join()).toContain("may lie on either side");
    const far = predicted(0.3 * reynolds, 0.25 * reynolds);
    expect(similar([2], far, far).rows[0].warnings).toEqual([]);
  });

  it("warns where the crisis is in reach of one flow only", () => {
    const none = { ...quiet, crises: [] };
    expect(similar([2], quiet, none).rows[0].warnings.join()).toContain("none in reach at that of the tunnel");
    expect(similar([2], none, quiet).rows[0].warnings.join()).toContain("none in reach at that of full size");
  });

  it("warns of other turbulence and of large blockage", () => {
    expect(similar([2], quiet, quiet, { turbulenceIntensity: 0.001 }).warnings.join()).toContain(
      "a grid ahead of the model",
    );
    expect(similar([2], quiet, quiet, { testSectionHeight: 0.5 }).warnings.join()).toContain(
      "fills 16 % of the test section",
    );
  });
});

describe("moistAirDensity(temperature, pressure, humidity)", () => {
  it("is that of dry air without humidity, US Standard Atmosphere (1976), 0.05 %", () => {
    expect(moistAirDensity(20, 101325, 0) / air.density).toBeCloseTo(1, 3);
  });

  it("ASHRAE psychrometrics at 20 °C, 101325 Pa, 70 %: 1.1971 kg/m3 (value of the public library Psychro.jl), 0.05 %", () => {
    expect(moistAirDensity(20, 101325, 0.7) / 1.1971436).toBeCloseTo(1, 3);
  });

  it("falls by 0.9 % from dry to saturated at 20 °C, from the saturation pressure of 2339 Pa", () => {
    const ratio = moistAirDensity(20, 101325, 1) / moistAirDensity(20, 101325, 0);
    expect(1 - ratio).toBeCloseTo((0.378 * 2339) / 101325, 3);
  });
});
