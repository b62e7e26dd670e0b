import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { incompleteBeta } from "../../shared/statistics/incompleteBeta";
import { fTail } from "../../shared/statistics/tailProbability";

const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
const index = fc.double({ min: 0.2, max: 40, noNaN: true });

/** Largest difference against the value, beside a floor for values that are rounding. */
const relative = (found: number, expected: number) => Math.abs(found - expected) / Math.max(Math.abs(expected), 1e-12);

describe("incompleteBeta(x, a, b)", () => {
  it("is x^a for b = 1 and 1 - (1 - x)^b for a = 1, 1e-12", () => {
    fc.assert(
      fc.property(share, index, (x, c) => {
        expect(relative(incompleteBeta(x, c, 1), x ** c)).toBeLessThan(1e-12);
        expect(relative(incompleteBeta(x, 1, c), -Math.expm1(c * Math.log1p(-x)))).toBeLessThan(1e-12);
      }),
    );
  });

  it("is the arcsine law 2/pi asin(sqrt x) for a = b = 1/2, 1e-13", () => {
    fc.assert(
      fc.property(share, (x) => {
        expect(relative(incompleteBeta(x, 0.5, 0.5), (2 / Math.PI) * Math.asin(Math.sqrt(x)))).toBeLessThan(1e-13);
      }),
    );
  });

  it("Abramowitz & Stegun (1964), 26.5.24: is the binomial chance of a or more in a + b - 1 for whole numbers, 1e-12", () => {
    const whole = fc.integer({ min: 1, max: 25 });
    fc.assert(
      fc.property(share, whole, whole, (x, a, b) => {
        const trials = a + b - 1;
        let term = 1;
        let chance = 0;
        for (let s = 0; s <= trials; s++) {
          if (s > 0) term *= (trials - s + 1) / s;
          if (s >= a) chance += term * x ** s * (1 - x) ** (trials - s);
        }
        expect(relative(incompleteBeta(x, a, b), chance)).toBeLessThan(1e-12);
      }),
    );
  });

  it("Abramowitz & Stegun (1964), 26.5.2: mirrored ends add up to 1, for all a and b", () => {
    fc.assert(
      fc.property(share, index, index, (x, a, b) => {
        expect(incompleteBeta(x, a, b) + incompleteBeta(1 - x, b, a)).toBeCloseTo(1, 12);
      }),
    );
  });

  it("is 0 and 1 at its ends, and refuses what is outside", () => {
    expect([incompleteBeta(0, 2, 3), incompleteBeta(1, 2, 3)]).toEqual([0, 1]);
    expect(() => incompleteBeta(1.1, 2, 3)).toThrow("x is 1.1");
    expect(() => incompleteBeta(0.5, 0, 3)).toThrow("a and b are 0 and 3");
  });
});

describe("fTail(x, numerator, denominator)", () => {
  // Abramowitz & Stegun (1964), table 26.9, percentage points of F; printed digits.
  it.each([
    [161.4, 1, 1, 0.05],
    [18.51, 1, 2, 0.05],
    [9.55, 2, 3, 0.05],
    [3.33, 5, 10, 0.05],
    [2.98, 10, 10, 0.05],
    [4.85, 10, 10, 0.01],
    [10.04, 1, 10, 0.01],
    [4.51, 3, 30, 0.01],
    [3.92, 1, 120, 0.05],
    [2.21, 5, Number.MAX_SAFE_INTEGER, 0.05],
  ])(
    "Abramowitz & Stegun (1964), table 26.9: %f with %i and %i degrees of freedom has %f above it",
    (x, n, m, above) => {
      const denominator = Math.min(m, 1e5);
      const half = 0.5 * 10 ** -(String(x).split(".")[1]?.length ?? 0);
      expect(fTail(x - half, n, denominator)).toBeGreaterThan(above);
      expect(fTail(x + half, n, denominator)).toBeLessThan(above);
    },
  );

  it("is (1 + 2 x / m)^(-m/2) for two degrees of freedom above, 1e-12 down to the far tail", () => {
    for (const [x, m] of [
      [0.3, 7],
      [12, 9],
      [400, 60],
    ]) {
      expect(relative(fTail(x, 2, m) * 1e60, (1 + (2 * x) / m) ** (-m / 2) * 1e60)).toBeLessThan(1e-12);
    }
  });

  it("is 1 at 0, 0 at infinity, and refuses 0 degrees of freedom", () => {
    expect([fTail(0, 2, 3), fTail(Number.POSITIVE_INFINITY, 2, 3)]).toEqual([1, 0]);
    expect(() => fTail(1, 0, 3)).toThrow("degrees of freedom are 0 and 3");
  });
});
