import { describe, expect, it } from "vitest";
import { puckAddedMass, spheroidAddedMass } from "../../shared/jobs/puck/motion/addedMass";
import { unwrap } from "../puck/examplePuck";

describe("spheroidAddedMass(axisRatio)", () => {
  it("a sphere has 1/2 both ways (Lamb 1932, art. 92)", () => {
    expect(spheroidAddedMass(1).along).toBeCloseTo(0.5, 12);
    expect(spheroidAddedMass(1).across).toBeCloseTo(0.5, 12);
  });

  // Lamb (1918), ARC R&M 623, table: prolate spheroid of length/breadth c/a moving end-on and broadside-on.
  it.each([
    [1.5, 0.305],
    [2.0, 0.209],
    [2.51, 0.156],
    [2.99, 0.122],
    [3.99, 0.082],
    [4.99, 0.059],
    [6.01, 0.045],
    [8.01, 0.029],
    [9.97, 0.021],
  ])(
    "length/breadth %d end-on has %d, to the rounding of the table's ratio and value, 2e-3 (Lamb 1918)",
    (ratio, k) => {
      expect(Math.abs(spheroidAddedMass(ratio).along - k)).toBeLessThan(2e-3);
    },
  );
  it.each([
    [3.99, 0.86],
    [8.01, 0.945],
    [9.02, 0.954],
  ])("length/breadth %d broadside-on has %d (Lamb 1918)", (ratio, k) => {
    expect(Math.abs(spheroidAddedMass(ratio).across - k)).toBeLessThan(2e-3);
  });

  it("is continuous where the series near the sphere takes over from the closed forms", () => {
    for (const ratio of [Math.sqrt(0.99), Math.sqrt(1.01)]) {
      const below = spheroidAddedMass(ratio * (1 - 1e-9)).along;
      const above = spheroidAddedMass(ratio * (1 + 1e-9)).along;
      expect(Math.abs(below - above)).toBeLessThan(2e-9);
    }
  });
});

describe("puckAddedMass(diameter, volume, fluidDensity)", () => {
  it("a thin disc has 8/3 rho R^3 face-on and nothing edge-on (Lamb 1932, art. 108), to 1e-4", () => {
    const volume = Math.PI * 0.04 ** 2 * 1e-6;
    const mass = unwrap(puckAddedMass(0.08, volume, 1000));
    expect(Math.abs(mass.faceOn / ((8 / 3) * 1000 * 0.04 ** 3) - 1)).toBeLessThan(1e-4);
    expect(mass.edgeOn).toBeLessThan(1e-4 * mass.faceOn);
  });

  it("refuses a volume of 0", () => {
    expect(puckAddedMass(0.08, 0, 1000).ok).toBe(false);
  });
});
