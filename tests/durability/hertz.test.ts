import { describe, expect, it } from "vitest";
import { contactModulus, hertzCylinder, hertzSphere, planeStrainModulus } from "../../shared/jobs/durability/hertz";

describe("sphere on a plane", () => {
  it("finite-element benchmark: r 8 mm, E 1000 N/mm2, nu 0.3 on a rigid plane, F = 30 x 2 pi N: a = 1.010 mm", () => {
    const { contactRadius } = hertzSphere(60 * Math.PI, 0.008, planeStrainModulus(1e9, 0.3));
    expect(1e3 * contactRadius).toBeCloseTo(1.01, 3);
  });

  it("Roark's Formulas for Stress and Strain, table 14.1: 0.721, 0.918 and 1.040 for radius, pressure and approach", () => {
    const [force, diameter] = [1000, 0.02];
    const compliance = (1 - 0.3 ** 2) / 200e9 + (1 - 0.33 ** 2) / 70e9;
    const found = hertzSphere(
      force,
      diameter / 2,
      contactModulus(planeStrainModulus(200e9, 0.3), planeStrainModulus(70e9, 0.33)),
    );
    expect(found.contactRadius / Math.cbrt(force * diameter * compliance)).toBeCloseTo(0.721, 3);
    expect(found.peakPressure / Math.cbrt(force / (diameter * compliance) ** 2)).toBeCloseTo(0.918, 3);
    expect(found.approach / Math.cbrt((force * compliance) ** 2 / diameter)).toBeCloseTo(1.04, 3);
  });
});

describe("cylinder on a plane", () => {
  it("Konter (2006), NAFEMS contact benchmark 1 (from memory): steel roller R 50 mm on aluminium, 35 kN/mm: a = 6.21 mm, 3585 N/mm2", () => {
    const modulus = contactModulus(planeStrainModulus(210e9, 0.3), planeStrainModulus(70e9, 0.3));
    const { halfWidth, peakPressure } = hertzCylinder(35e6, 0.05, modulus);
    expect(1e3 * halfWidth).toBeCloseTo(6.21, 2);
    expect(1e-6 * peakPressure).toBeCloseTo(3585.37, 1);
  });
});
