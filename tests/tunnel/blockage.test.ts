import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  allenVincenti,
  blockageRange,
  correctBlockage,
  maskell,
  maskellFactor,
} from "../../shared/jobs/tunnel/blockage";
import { circleModel } from "./tunnelSamples";

const { shape } = circleModel();

describe("allenVincenti(dragCoefficient, blockageRatio)", () => {
  // Cd_c / Cd worked out from the equations of Allen & Vincenti (1944), NACA TR 782, to three digits.
  it.each([
    [0.05, 1.2, 0.964],
    [0.05, 0.3, 0.986],
    [0.1, 1.2, 0.915],
    [0.1, 0.3, 0.96],
    [0.15, 1.2, 0.854],
    [0.15, 0.3, 0.921],
  ])("Allen & Vincenti (1944): d/h %f, Cd %f is corrected by %f, 0.001", (ratio, drag, corrected) => {
    expect(Math.abs(allenVincenti(drag, ratio).dragCoefficient / drag - corrected)).toBeLessThan(0.001);
  });

  it("Allen & Vincenti (1944): speed 1 + Cd (d/h) / 4 + 0.82 (d/h)^2, exact", () => {
    expect(allenVincenti(1.2, 0.1).speedRatio).toBeCloseTo(1.0382, 12);
  });

  it("takes out of the drag about twice what it adds to the dynamic pressure's root, to first order", () => {
    const { dragCoefficient, speedRatio } = allenVincenti(1, 0.01);
    expect(1 - dragCoefficient).toBeCloseTo(2 * (speedRatio - 1), 3);
  });
});

describe("maskell(dragCoefficient, blockageRatio, factor)", () => {
  it("Maskell (1963): a square plate, Cd 1.2 with S/C 4 %, has q_c / q 1.12 and Cd_c 1.0714, exact", () => {
    const found = maskell(1.2, 0.04, maskellFactor.finite);
    expect(found.speedRatio ** 2).toBeCloseTo(1.12, 12);
    expect(found.dragCoefficient).toBeCloseTo(1.2 / 1.12, 12);
  });

  it("keeps the force: Cd_c q_c = Cd q, for any values", () => {
    const positive = fc.double({ min: 0.01, max: 2, noNaN: true });
    fc.assert(
      fc.property(positive, fc.double({ min: 0, max: 0.2, noNaN: true }), (drag, ratio) => {
        const found = maskell(drag, ratio, 2.5);
        expect(found.dragCoefficient * found.speedRatio ** 2).toBeCloseTo(drag, 10);
        expect(found.dragCoefficient).toBeLessThanOrEqual(drag);
      }),
    );
  });
});

describe("correctBlockage(method, shape, dragCoefficient, blockageRatio, share)", () => {
  it("does nothing without a method or without blockage", () => {
    for (const method of ["none", "maskell", "allenVincenti"] as const) {
      expect(correctBlockage(method, shape, 1.1, 0)).toEqual({ dragCoefficient: 1.1, speedRatio: 1 });
      expect(correctBlockage(method, shape, 1.1, 0.1, 0)).toEqual({ dragCoefficient: 1.1, speedRatio: 1 });
    }
    expect(correctBlockage("none", shape, 1.1, 0.3).dragCoefficient).toBe(1.1);
  });

  it("takes Maskell's factor of two dimensions for a section, 0.96, and 5/2 for a body with ends", () => {
    expect(correctBlockage("maskell", shape, 1, 0.1).dragCoefficient).toBeCloseTo(1 / 1.096, 12);
    expect(correctBlockage("maskell", { kind: "puck" }, 1, 0.1).dragCoefficient).toBeCloseTo(1 / 1.25, 12);
  });
});

describe("blockageRange(method, shape, blockageRatio)", () => {
  it("holds each method against what it was made for", () => {
    expect(blockageRange("allenVincenti", shape, 0.1).isInRange).toBe(true);
    expect(blockageRange("allenVincenti", shape, 0.3).isInRange).toBe(false);
    expect(blockageRange("maskell", shape, 0.2).isInRange).toBe(false);
    expect(blockageRange("none", shape, 0.1).reason).toContain("too high");
    if (shape.kind !== "section") return;
    expect(blockageRange("allenVincenti", { ...shape, isCircle: false }, 0.1).isInRange).toBe(false);
    const long = { ...shape, isCircle: false, length: 0.3 };
    expect(blockageRange("maskell", long, 0.05).reason).toContain("may come back to the sides");
  });
});
