import { describe, expect, it } from "vitest";
import { sizeCoreForMass } from "../../shared/jobs/puck/body/coreSizing";
import type { PuckSpec } from "../../shared/jobs/puck/body/puckSpec";
import { examplePuck, unwrap } from "./examplePuck";

const water = { fluidDensity: 996.51 };

describe("sizeCoreForMass(spec, setting, wantedMass, freeDimension, leastCover)", () => {
  it.each(["diameter", "thickness"] as const)("a disc's %s is found to 1e-12 kg", (dimension) => {
    const sized = unwrap(sizeCoreForMass(examplePuck, water, 0.8, dimension, 0.002));
    expect(Math.abs(sized.figures.massKilograms - 0.8)).toBeLessThan(1e-12);
    expect(sized.figures.coverMetres ?? 0).toBeGreaterThanOrEqual(0.002);
  });

  it("a sharp disc core's thickness matches the closed form (m - rho_coat V) / ((rho_core - rho_coat) pi R^2)", () => {
    const puck: PuckSpec = {
      ...examplePuck,
      edge: { kind: "radius", edgeRadiusMetres: 0 },
      core: { kind: "disc", material: "lead", diameterMetres: 0.06, thicknessMetres: 0.01 },
    };
    const sized = unwrap(sizeCoreForMass(puck, water, 0.75, "thickness", 0.001));
    const expected = (0.75 - 1120 * Math.PI * 0.04 ** 2 * 0.03) / ((11340 - 1120) * Math.PI * 0.03 ** 2);
    expect(sized.spec.core).toMatchObject({ kind: "disc" });
    if (sized.spec.core.kind === "disc") expect(sized.spec.core.thicknessMetres).toBeCloseTo(expected, 12);
  });

  it("a coat over a core that follows it, and a ring's hole, are found as well", () => {
    const coated: PuckSpec = {
      ...examplePuck,
      core: { kind: "underCoat", material: "lead", coatThicknessMetres: 0.002 },
    };
    expect(unwrap(sizeCoreForMass(coated, water, 1.25, "coatThickness", 0.001)).figures.massKilograms).toBeCloseTo(
      1.25,
      12,
    );
    const ring: PuckSpec = {
      ...examplePuck,
      core: {
        kind: "ring",
        material: "lead",
        outerDiameterMetres: 0.072,
        innerDiameterMetres: 0.02,
        thicknessMetres: 0.02,
      },
    };
    expect(unwrap(sizeCoreForMass(ring, water, 0.7, "innerDiameter", 0.001)).figures.massKilograms).toBeCloseTo(
      0.7,
      12,
    );
  });

  it("says what can be reached when the wanted mass cannot", () => {
    const result = sizeCoreForMass(examplePuck, water, 3, "thickness", 0.002);
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.problem.message).toMatch(/wanted mass 3 kg cannot be reached: .* kg to .* kg/);
  });

  it("refuses a dimension that the core does not have", () => {
    const result = sizeCoreForMass(examplePuck, water, 1.2, "innerDiameter", 0.002);
    expect(result.ok).toBe(false);
  });
});
