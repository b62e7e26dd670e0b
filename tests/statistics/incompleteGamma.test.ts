import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { upperIncompleteGamma } from "../../shared/statistics/incompleteGamma";
import { logGamma } from "../../shared/statistics/logGamma";
import { chiSquareTail } from "../../shared/statistics/tailProbability";

const relative = (found: number, expected: number) => Math.abs(found - expected) / Math.abs(expected);

describe("logGamma(x)", () => {
  it("is the logarithm of (x - 1)! for whole numbers and of sqrt(pi) for a half, to a few roundings", () => {
    let factorial = 1;
    for (let n = 1; n <= 60; n++) {
      if (n > 1) factorial *= n - 1;
      expect(Math.abs(logGamma(n) - Math.log(factorial))).toBeLessThan(4e-15 * Math.max(4, Math.log(factorial)));
    }
    expect(Math.abs(logGamma(0.5) - 0.5 * Math.log(Math.PI))).toBeLessThan(1e-14);
  });

  // Abramowitz & Stegun (1964), table 6.1 (Gamma, ten digits).
  it.each([
    [1.25, 0.9064024771],
    [1.5, 0.8862269255],
    [1.75, 0.9190625268],
  ])("Abramowitz & Stegun (1964), table 6.1: Gamma(%f) is %f", (x, gamma) => {
    expect(Math.exp(logGamma(x))).toBeCloseTo(gamma, 9);
  });

  it("Abramowitz & Stegun (1964), 6.1.17 and 6.1.18: reflection and duplication hold, 1e-12", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (x) => {
        const reflected = Math.log(Math.PI / Math.sin(Math.PI * x));
        expect(logGamma(x) + logGamma(1 - x)).toBeCloseTo(reflected, 12);
        const doubled = logGamma(30 * x) + logGamma(30 * x + 0.5) + (60 * x - 0.5) * Math.LN2;
        expect(doubled - 0.5 * Math.log(2 * Math.PI)).toBeCloseTo(logGamma(60 * x), 11);
      }),
    );
  });

  it("refuses 0", () => {
    expect(() => logGamma(0)).toThrow("x is 0; it must be above 0");
  });
});

describe("upperIncompleteGamma(a, x)", () => {
  it("Abramowitz & Stegun (1964), 6.5.13: is the Poisson chance of fewer than a for whole numbers, 1e-12", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.double({ min: 0.01, max: 120, noNaN: true }), (a, x) => {
        let term = Math.exp(-x);
        let chance = term;
        for (let k = 1; k < a; k++) {
          term *= x / k;
          chance += term;
        }
        expect(relative(upperIncompleteGamma(a, x), chance)).toBeLessThan(1e-12);
      }),
    );
  });

  // Abramowitz & Stegun (1964), table 7.1: erf(x), ten digits; Q(1/2, x^2) = 1 - erf(x) (6.5.17).
  it.each([
    [0.1, 0.112462916],
    [0.5, 0.5204998778],
    [1, 0.8427007929],
    [1.5, 0.9661051465],
    [2, 0.995322265],
  ])("Abramowitz & Stegun (1964), table 7.1: erf(%f) is %f", (x, erf) => {
    expect(1 - upperIncompleteGamma(0.5, x * x)).toBeCloseTo(erf, 9);
  });

  it("is 1 at 0 and 0 at infinity, and refuses what is outside", () => {
    expect([upperIncompleteGamma(3, 0), upperIncompleteGamma(3, Number.POSITIVE_INFINITY)]).toEqual([1, 0]);
    expect(() => upperIncompleteGamma(0, 1)).toThrow("a is 0");
    expect(() => upperIncompleteGamma(1, -1)).toThrow("x is -1");
  });
});

describe("chiSquareTail(x, degreesOfFreedom)", () => {
  // Abramowitz & Stegun (1964), table 26.8, percentage points of chi-square; printed digits.
  it.each([
    [3.84146, 1, 0.05],
    [6.6349, 1, 0.01],
    [5.99147, 2, 0.05],
    [11.0705, 5, 0.05],
    [2.55821, 10, 0.99],
    [18.307, 10, 0.05],
    [43.773, 30, 0.05],
    [124.342, 100, 0.05],
    [149.449, 100, 0.001],
  ])("Abramowitz & Stegun (1964), table 26.8: %f with %i degrees of freedom has %f above it", (x, degrees, above) => {
    // Six digits are printed, the last of 5.99147 rounded up from 5.991465.
    const lastDigit = 10 ** (Math.floor(Math.log10(x)) - 5);
    expect(chiSquareTail(x - lastDigit, degrees)).toBeGreaterThan(above);
    expect(chiSquareTail(x + lastDigit, degrees)).toBeLessThan(above);
  });

  it("is 1 at 0 and refuses 0 degrees of freedom", () => {
    expect(chiSquareTail(0, 4)).toBe(1);
    expect(() => chiSquareTail(1, 0)).toThrow("degrees of freedom are 0");
  });
});
