import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CALIBRATED } from "../../shared/engine/constants/calibrated";
import { plateFriction, roughFriction } from "../../shared/engine/roughness/plateFriction";
import { roughnessFunction } from "../../shared/engine/roughness/roughnessFunction";
import { roughTransition } from "../../shared/engine/roughness/roughTransition";
import { tripFires } from "../../shared/engine/roughness/tripTransition";

describe("roughnessFunction at Nikuradse's own ranges", () => {
  it("fully rough from ks+ 90 on: Nikuradse's (1933) 2.5 ln ks+ + 5.5 - 8.5, at 90 itself too", () => {
    for (const ksPlus of [90, 200, 1e4]) expect(roughnessFunction(ksPlus)).toBeCloseTo(2.5 * Math.log(ksPlus) - 3, 12);
  });

  it("transitionally rough: the fully rough line times sin 0.4258 (ln ks+ - 0.811) (Ioselevich & Pilipenko 1974), computed from the formula", () => {
    // ks+ 20: 4.4893 * sin(0.93026) = 4.4893 * 0.80178 = 3.5994.
    expect(roughnessFunction(20)).toBeCloseTo(3.5994, 3);
    // ks+ 50: 6.7801 * sin(1.32042) = 6.7801 * 0.96883 = 6.5688.
    expect(roughnessFunction(50)).toBeCloseTo(6.5688, 3);
  });
});

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
    for (const ReTheta of [1, 10.5, 40, 50, 200]) {
      expect(plateFriction(ReTheta, 0)).toBeGreaterThan(0);
      expect(plateFriction(ReTheta, 1e9)).toBeLessThanOrEqual(0.02 + 1e-15);
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

describe("roughTransition", () => {
  it("follows Achenbach's (1977) critical Re ~ (ks/D)^-1/2 where theta ~ D / sqrt(Re)", () => {
    // Re at which Re_theta = 0.3 sqrt(Re) meets the criterion, for a shoulder layer of theta = 0.3 D / sqrt(Re).
    const critical = (ks: number) => {
      let low = 1e3;
      let high = 1e8;
      for (let i = 0; i < 80; i++) {
        const Re = Math.sqrt(low * high);
        const theta = 0.3 / Math.sqrt(Re);
        const limit = roughTransition(ks / theta, ks * Re, { ...CALIBRATED, smoothWallLimit: 0 });
        if (theta * Re > limit) high = Re;
        else low = Re;
      }
      return low;
    };
    for (const ks of [1e-4, 1e-3]) expect(critical(ks) / critical(10 * ks)).toBeCloseTo(Math.sqrt(10), 6);
  });

  it("is Infinity up to the limit of a smooth wall and for NaN", () => {
    const constants = { roughTransition: 200, smoothWallLimit: 60 };
    expect(roughTransition(0.5, 60, constants)).toBe(Number.POSITIVE_INFINITY);
    expect(roughTransition(0.5, Number.NaN, constants)).toBe(Number.POSITIVE_INFINITY);
    expect(roughTransition(1, 61, constants)).toBe(200);
    expect(roughTransition(8, 61, constants)).toBeCloseTo(100, 12);
  });
});
