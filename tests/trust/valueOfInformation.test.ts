import { describe, expect, it } from "vitest";
import { valueOfInformation } from "../../shared/engine/trust/valueOfInformation";
import { normalDensity, normalDistribution } from "../../shared/statistics/normal";
import { randomDraws } from "../../shared/statistics/randomDraws";

/** Unit normal linear loss integral, Raiffa & Schlaifer (1961), sec. 5.5 and table II. */
const linearLoss = (u: number) => normalDensity(u) - u * (1 - normalDistribution(u));

/** Two choices: the loss of one is normal, that of the other 0; the measurement shows the first with noise. */
function twoActions(mean: number, deviation: number, noise: number) {
  const count = 6000;
  const draws = randomDraws(5);
  const loss = Float64Array.from({ length: count }, () => mean + deviation * draws.normal());
  return valueOfInformation([loss, new Float64Array(count)], loss, noise, 1500, 0.9, randomDraws(6));
}

describe("valueOfInformation of the normal two-action problem", () => {
  it.each([
    [0, 1, 1],
    [0.5, 1, 0.5],
    [-0.3, 2, 1],
    [1, 1, 2],
  ])(
    "Raiffa & Schlaifer (1961), sec. 5.5: mean %d, deviation %d, noise %d, within 0.03 deviations",
    (mean, deviation, noise) => {
      const { regretNow, regretAfter } = twoActions(mean, deviation, noise);
      // Prior standard deviation of the posterior mean.
      const moved = deviation ** 2 / Math.hypot(deviation, noise);
      const perfect = deviation * linearLoss(Math.abs(mean) / deviation);
      const sample = moved * linearLoss(Math.abs(mean) / moved);
      expect(Math.abs(regretNow - perfect) / deviation).toBeLessThan(0.03);
      expect(Math.abs(regretNow - regretAfter - sample) / deviation).toBeLessThan(0.03);
    },
  );

  it("is nothing for a measurement that shows nothing, and all of the regret for one without noise", () => {
    const dull = twoActions(0.2, 1, 1e3);
    expect(dull.regretAfter / dull.regretNow).toBeGreaterThan(0.98);
    const sharp = twoActions(0.2, 1, 0.02);
    expect(sharp.regretAfter / sharp.regretNow).toBeLessThan(0.02);
    expect(sharp.decidedShare).toBeGreaterThan(0.95);
  });

  it("refuses a measurement without noise", () => {
    expect(() => twoActions(0, 1, 0)).toThrow("must be above 0");
  });
});
