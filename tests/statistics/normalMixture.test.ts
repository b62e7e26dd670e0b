import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { upperIncompleteGamma } from "../../shared/statistics/incompleteGamma";
import { normalDistribution, normalQuantile } from "../../shared/statistics/normal";
import {
  meanExponential,
  mixtureDistribution,
  mixtureQuantile,
  mixtureScore,
  type NormalMixture,
  widened,
} from "../../shared/statistics/normalMixture";
import { randomDraws } from "../../shared/statistics/randomDraws";
import { mean, standardDeviation } from "../../shared/statistics/sample";

const two: NormalMixture = {
  weights: Float64Array.of(0.3, 0.7),
  means: Float64Array.of(-1, 0.5),
  deviations: Float64Array.of(0.2, 0.6),
};

describe("normalDistribution(x)", () => {
  it("is half of erfc(-x / sqrt 2), erfc(z) being the upper incomplete gamma function of 1/2 at z^2, 1.5e-7", () => {
    for (let x = 0; x <= 6; x += 0.05) {
      const tail = upperIncompleteGamma(0.5, (x * x) / 2) / 2;
      expect(Math.abs(normalDistribution(-x) - tail)).toBeLessThan(1.5e-7);
      expect(normalDistribution(x) + normalDistribution(-x)).toBeCloseTo(1, 6);
    }
  });
});

describe("normalQuantile(probability)", () => {
  it("Abramowitz & Stegun (1964), table 26.5: 1.28155, 1.64485, 1.95996, 2.32635, 1e-5", () => {
    const table = [0.9, 0.95, 0.975, 0.99].map(normalQuantile);
    [1.28155, 1.64485, 1.95996, 2.32635].forEach((value, i) => {
      expect(Math.abs(table[i] - value)).toBeLessThan(1e-5);
    });
  });

  it("refuses what is no probability", () => {
    expect(() => normalQuantile(1)).toThrow("the probability is 1");
  });
});

describe("a mixture of normal distributions", () => {
  it("has quantiles that undo its distribution, 1e-6", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (probability) => {
        expect(Math.abs(mixtureDistribution(two, mixtureQuantile(two, probability)) - probability)).toBeLessThan(1e-5);
      }),
    );
  });

  it("has the score of Gneiting & Raftery (2007), eq. 20: the integral of (distribution - step)^2, 1e-4", () => {
    for (const came of [-2, -0.9, 0.1, 0.6, 3]) {
      let integral = 0;
      const step = 1e-3;
      for (let x = -8 + step / 2; x < 8; x += step) {
        integral += step * (mixtureDistribution(two, x) - (x >= came ? 1 : 0)) ** 2;
      }
      expect(Math.abs(mixtureScore(two, came) - integral)).toBeLessThan(1e-4);
    }
  });

  it("scores a normal forecast of its own draws deviation / sqrt(pi) on average, within four standard errors", () => {
    const deviation = 0.3;
    const own: NormalMixture = {
      weights: Float64Array.of(1),
      means: Float64Array.of(1),
      deviations: Float64Array.of(deviation),
    };
    const draws = randomDraws(11);
    const scores = Array.from({ length: 4000 }, () => mixtureScore(own, 1 + deviation * draws.normal()));
    const error = standardDeviation(scores) / Math.sqrt(scores.length);
    expect(Math.abs(mean(scores) - deviation / Math.sqrt(Math.PI))).toBeLessThan(4 * error);
  });

  it("has the mean exponential of its components, exp(mean + variance / 2)", () => {
    const expected = 0.3 * Math.exp(-1 + 0.02) + 0.7 * Math.exp(0.5 + 0.18);
    expect(meanExponential(two)).toBeCloseTo(expected, 12);
  });

  it("is widened by an independent draw as variances add", () => {
    expect(Array.from(widened(two, () => 0.8).deviations)).toEqual([Math.hypot(0.2, 0.8), Math.hypot(0.6, 0.8)]);
  });
});
