import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plateFriction, roughFriction } from "../../shared/engine/roughness/plateFriction";
import { roughnessFunction } from "../../shared/engine/roughness/roughnessFunction";
import { tripFires } from "../../shared/engine/roughness/tripTransition";

describe("roughnessFunction: shift of the logarithmic profile by sand grains", () => {
  it("fully rough: between the lines of (1/0.41) ln ks+ - 3.5 and of Nikuradse (1933), 2.5 ln ks+ - 3, from memory, within 0.1", () => {
    for (const ksPlus of [80, 100, 300, 2000]) {
      expect(roughnessFunction(ksPlus)).toBeGreaterThan(Math.log(ksPlus) / 0.41 - 3.5 - 0.1);
      expect(roughnessFunction(ksPlus)).toBeLessThan(2.5 * Math.log(ksPlus) - 3 + 0.1);
    }
  });

  it("smooth: nothing below ks+ 2.25 and less than 0.4 at 5, where sand is still called hydraulically smooth (Nikuradse 1933)", () => {
    expect(roughnessFunction(0)).toBe(0);
    expect(roughnessFunction(2.2)).toBe(0);
    expect(roughnessFunction(5)).toBeGreaterThan(0);
    expect(roughnessFunction(5)).toBeLessThan(0.4);
  });

  it("between: below Colebrook's (1/0.41) ln(1 + 0.3 ks+), by which industrial roughness acts sooner than sand, up to ks+ 60", () => {
    for (const ksPlus of [5, 10, 30, 60]) {
      expect(roughnessFunction(ksPlus)).toBeLessThan(Math.log(1 + 0.3 * ksPlus) / 0.41);
    }
  });

  it("is continuous at both ends of the transitional range and never falls with ks+", () => {
    for (const joint of [2.25, 90]) {
      expect(roughnessFunction(joint * 1.000001) - roughnessFunction(joint * 0.999999)).toBeLessThan(1e-4);
    }
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (ksPlus, more) => {
          expect(roughnessFunction(ksPlus * more)).toBeGreaterThanOrEqual(roughnessFunction(ksPlus));
        },
      ),
    );
  });
});

describe("plateFriction", () => {
  it("smooth: 0.01013 / (log10 Re_theta - 1.02) - 0.00075 (Green, Weeks & Brooman 1977), computed from the formula", () => {
    expect(plateFriction(1e4, 0)).toBeCloseTo(0.01013 / 2.98 - 0.00075, 14);
    expect(plateFriction(1e5, 0)).toBeCloseTo(0.01013 / 3.98 - 0.00075, 14);
  });

  /** Shift of the profile of a layer over that of the same layer on a smooth wall, and u_tau / Ue. */
  const shiftOf = (ReTheta: number, reynoldsRoughness: number) => {
    const Cf = plateFriction(ReTheta, reynoldsRoughness);
    return {
      shift: Math.sqrt(2 / plateFriction(ReTheta, 0)) - Math.sqrt(2 / Cf),
      frictionSpeed: Math.sqrt(Cf / 2),
      Cf,
    };
  };

  it("rough: sqrt(2/Cf) is lower than on a smooth wall by Delta U+ at its own ks+ where grains are small in the layer (ks below theta / 1000), to 0.1 %", () => {
    for (const [ReTheta, reynoldsRoughness] of [
      [1e6, 500],
      [1e7, 1e4],
      [1e8, 2e4],
    ]) {
      const { shift, frictionSpeed, Cf } = shiftOf(ReTheta, reynoldsRoughness);
      const expected = roughnessFunction(reynoldsRoughness * frictionSpeed);
      expect(expected).toBeGreaterThan(1);
      expect(Math.abs(shift / expected - 1)).toBeLessThan(1e-3);
      expect(Math.abs(roughFriction(ReTheta, reynoldsRoughness, Cf) / Cf - 1)).toBeLessThan(2e-3);
    }
  });

  it("tall grains: the shift levels off at that of grains of the order of theta, between an eighth and twice that (Jimenez 2004 and Flack & Schultz 2007 end the logarithmic profile at ks = 1/40 to 1/6 of a layer of 8 to 10 theta, from memory)", () => {
    for (const ReTheta of [1000, 1e4, 1e5]) {
      const { shift, frictionSpeed } = shiftOf(ReTheta, 1e4 * ReTheta);
      expect(shift).toBeGreaterThan(roughnessFunction((ReTheta / 8) * frictionSpeed));
      expect(shift).toBeLessThan(roughnessFunction(2.02 * ReTheta * frictionSpeed));
    }
  });

  it("never falls when the wall gets rougher, never rises with Re_theta, and stays within (0, 0.02]", () => {
    const log = (min: number, max: number) =>
      fc.double({ min: Math.log(min), max: Math.log(max), noNaN: true }).map(Math.exp);
    fc.assert(
      fc.property(log(200, 1e6), log(1, 1e6), log(1, 10), (ReTheta, roughness, factor) => {
        const Cf = plateFriction(ReTheta, roughness);
        expect(Cf).toBeGreaterThan(0);
        expect(Cf).toBeLessThanOrEqual(0.02);
        expect(plateFriction(ReTheta, roughness * factor)).toBeGreaterThanOrEqual(Cf * (1 - 1e-3));
        expect(plateFriction(ReTheta * factor, roughness)).toBeLessThanOrEqual(Cf * (1 + 1e-3));
        expect(Cf).toBeGreaterThanOrEqual(plateFriction(ReTheta, 0) * (1 - 1e-12));
      }),
    );
  });

  it("stays finite for layers thinner than the correlations", () => {
    for (const ReTheta of [1, 10.5, 50, 200]) {
      expect(plateFriction(ReTheta, 0)).toBeGreaterThan(0);
      expect(plateFriction(ReTheta, 1e4)).toBeLessThanOrEqual(0.02 + 1e-15);
    }
  });
});

describe("tripFires", () => {
  it("above Ue h / nu = 826 (Gibbings 1959, from memory) and not at it, nor for NaN", () => {
    expect(tripFires(826)).toBe(false);
    expect(tripFires(826.1)).toBe(true);
    expect(tripFires(0)).toBe(false);
    expect(tripFires(Number.NaN)).toBe(false);
  });
});
