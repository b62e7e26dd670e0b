import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { confinedDrag } from "../../shared/jobs/evidence/confinedDrag";
import { allenVincenti } from "../../shared/jobs/tunnel/blockage";

describe("confinedDrag(freeDrag, blockageRatio, lengthToWidth), Allen & Vincenti 1944, NACA TR 782", () => {
  it("is undone by the published correction of a circle, to 1e-12", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 1.4, noNaN: true }),
        fc.double({ min: 0.001, max: 0.18, noNaN: true }),
        (free, blockageRatio) => {
          const confined = confinedDrag(free, blockageRatio, 1)!;
          const corrected = allenVincenti(confined.dragCoefficient, blockageRatio);
          expect(corrected.dragCoefficient).toBeCloseTo(free, 12);
          expect(corrected.speedRatio).toBeCloseTo(confined.speedRatio, 12);
        },
      ),
    );
  });

  it("gives the published ratios back: 0.915 at Cd 1.2 and 0.960 at Cd 0.3 for d/h 0.1 (computed from the formula)", () => {
    for (const [measured, ratio] of [
      [1.2, 0.915],
      [0.3, 0.96],
    ]) {
      expect(confinedDrag(measured * ratio, 0.1, 1)!.dragCoefficient).toBeCloseTo(measured, 3);
    }
  });

  it("is the free drag without walls, has no answer where the walls are too near, and refuses nonsense", () => {
    expect(confinedDrag(1.2, 0, 1)).toEqual({ dragCoefficient: 1.2, speedRatio: 1 });
    expect(confinedDrag(2.4, 0.25, 1)).toBe(null);
    expect(() => confinedDrag(1, 0.3, 1)).toThrow("blockage ratio is 0.3");
    expect(() => confinedDrag(1, Number.NaN, 1)).toThrow(RangeError);
  });
});
