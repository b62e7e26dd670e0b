import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  entrainmentFriction,
  entrainmentOfStress,
  entrainmentShapeFactor,
  entrainmentShapeSlope,
  equilibriumEntrainment,
  equilibriumGradient,
  maximumStress,
  plateShapeFactor,
} from "../../shared/engine/layer/lagEntrainment";
import { headEntrainment, headShapeFactor, shapeFactorOfHead } from "../../shared/engine/layer/textbook/head";
import { ludwiegTillmannFriction } from "../../shared/engine/layer/textbook/ludwiegTillmann";
import { plateFriction } from "../../shared/engine/roughness/plateFriction";
import { headCheckValues } from "../published/head-1958";
import { ludwiegTillmannCheckValues } from "../published/ludwieg-tillmann-1949";

describe("Head 1958", () => {
  for (const { shapeFactor, headShapeFactor: H1, entrainment } of headCheckValues) {
    it(`H ${shapeFactor}: H1 ${H1} and F ${entrainment}, to the digits printed`, () => {
      expect(Math.abs(headShapeFactor(shapeFactor) - H1)).toBeLessThan(6e-4);
      expect(Math.abs(headEntrainment(headShapeFactor(shapeFactor)) - entrainment)).toBeLessThan(6e-6);
    });
  }

  it("H of H1 is the inverse of H1 of H on both sides of the fit's jump at H = 1.6 (5.309 and 5.287)", () => {
    expect(headShapeFactor(1.6)).toBeCloseTo(5.309, 3);
    expect(headShapeFactor(1.6000001)).toBeCloseTo(5.287, 3);
    fc.assert(
      fc.property(fc.double({ min: 1.15, max: 3, noNaN: true }), (H) => {
        fc.pre(!(H > 1.59 && H <= 1.61));
        expect(shapeFactorOfHead(headShapeFactor(H))).toBeCloseTo(H, 10);
      }),
    );
  });
});

describe("Ludwieg & Tillmann 1949", () => {
  for (const { shapeFactor, momentumReynolds, skinFriction } of ludwiegTillmannCheckValues) {
    it(`H ${shapeFactor}, Re_theta ${momentumReynolds}: Cf ${skinFriction}, to the digits printed`, () => {
      expect(Math.abs(ludwiegTillmannFriction(shapeFactor, momentumReynolds) - skinFriction)).toBeLessThan(6e-7);
    });
  }
});

describe("Green, Weeks & Brooman 1977", () => {
  it("plate at Re_theta 1.55e4: Cf 0.00243 within 2 %, H 1.28 within 2 % (Wieghardt in Coles & Hirst 1968, IDENT 1400, from memory)", () => {
    const Cf0 = plateFriction(1.55e4, 0);
    expect(Math.abs(Cf0 / 0.00243 - 1)).toBeLessThan(0.02);
    expect(Math.abs(plateShapeFactor(Cf0) / 1.28 - 1)).toBeLessThan(0.02);
  });

  it("plate without gradient: Cf = Cf0 at H0, and hardly any equilibrium gradient", () => {
    for (const ReTheta of [500, 2000, 1e4, 1e5]) {
      const Cf0 = plateFriction(ReTheta, 0);
      const H0 = plateShapeFactor(Cf0);
      expect(entrainmentFriction(H0, H0, Cf0) / Cf0).toBeCloseTo(1, 12);
      expect(Math.abs(equilibriumGradient(H0, Cf0))).toBeLessThan(0.05 * Cf0);
      // d(theta H1)/ds = C_E with dtheta/ds = Cf/2, when H1 stays.
      const ratio = equilibriumEntrainment(H0, Cf0) / ((entrainmentShapeFactor(H0) * Cf0) / 2);
      expect(Math.abs(ratio - 1)).toBeLessThan(0.1);
    }
  });

  it("H1 values: 8.88 at H 1.3, 6.58 at 1.5, 5.29 at 1.8 (computed from the published formula), and falls with H", () => {
    expect(entrainmentShapeFactor(1.3)).toBeCloseTo(8.8824, 4);
    expect(entrainmentShapeFactor(1.5)).toBeCloseTo(6.5875, 4);
    expect(entrainmentShapeFactor(1.8)).toBeCloseTo(5.2936, 4);
  });

  it("dH1/dH is the derivative of H1", () => {
    for (const H of [1.2, 1.4, 1.8, 2.5]) {
      const difference = (entrainmentShapeFactor(H + 1e-5) - entrainmentShapeFactor(H - 1e-5)) / 2e-5;
      expect(entrainmentShapeSlope(H) / difference).toBeCloseTo(1, 7);
    }
  });

  it("C_E of a stress is the inverse of the stress of C_E", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        fc.double({ min: 1e-3, max: 0.01, noNaN: true }),
        (CE, Cf0) => {
          expect(entrainmentOfStress(maximumStress(CE, Cf0), Cf0)).toBeCloseTo(CE, 9);
        },
      ),
    );
  });

  it("friction vanishes at H = 2.2 H0 and is negative beyond", () => {
    expect(entrainmentFriction(2.2 * 1.4, 1.4, 0.003)).toBeCloseTo(0, 12);
    expect(entrainmentFriction(2.5 * 1.4, 1.4, 0.003)).toBeLessThan(0);
  });
});
