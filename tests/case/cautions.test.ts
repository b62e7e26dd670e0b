import { describe, expect, it } from "vitest";
import packageInfo from "../../package.json" with { type: "json" };
import { cautionsFor, screeningCaution } from "../../shared/case/cautions";
import { generatedBy } from "../../shared/document/generatedBy";
import type { FluidSpec } from "../../shared/engine/fluid/fluidSpec";
import { resolveFluid } from "../../shared/engine/fluid/resolveFluid";
import { sampleRow } from "./sampleResults";

function fluid(spec: FluidSpec) {
  const resolved = resolveFluid(spec);
  if (!resolved.ok) throw new Error(resolved.problem.message);
  return resolved.value;
}

const water = fluid({ kind: "freshWater", temperatureCelsius: 27 });
const air = fluid({ kind: "dryAir", temperatureCelsius: 20, pressurePascals: 101325 });

describe("cautionsFor(fluid, rows)", () => {
  it("always says that these are screening estimates", () => {
    expect(cautionsFor(null, [])).toEqual([screeningCaution]);
    expect(cautionsFor(water, [sampleRow({ speed: 6 })])).toEqual([screeningCaution]);
    expect(cautionsFor(air, [sampleRow({ speed: 100 })])).toEqual([screeningCaution]);
  });

  it("warns of compressible air above 0.3 of the speed of sound", () => {
    expect(cautionsFor(air, [sampleRow({ speed: 104 })])[1]).toMatch(/0\.3 of the speed of sound/);
  });

  it("warns of cavitation where suction exceeds one atmosphere", () => {
    // 1.31 x 997 / 2 x 13^2 = 110 kPa.
    expect(cautionsFor(water, [sampleRow({ speed: 13 })])[1]).toMatch(/110 kPa .* cavitate/);
    expect(cautionsFor(water, [sampleRow({ speed: 12 })])).toHaveLength(1);
  });
});

describe("generatedBy", () => {
  it("is the version in package.json", () => {
    expect(generatedBy).toBe(`Wakewright ${packageInfo.version}`);
  });
});
