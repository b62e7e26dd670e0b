import { describe, expect, it } from "vitest";
import { valueOfInformation } from "../../shared/engine/trust/valueOfInformation";
import { normalDensity, normalDistribution } from "../../shared/statistics/normal";
import { randomDraws } from "../../shared/statistics/randomDraws";

/** Unit normal linear loss integral, Raiffa & Schlaifer (1961), sec. 5.5 and table II. */
const linearLoss = (u: number) => normalDensity(u) - u * (1 - normalDistribution(u));

/** Two choices: the loss of one is normal, that of the other 0; the measurement shows the first with noise. */
function twoActions(mean: number, deviation: number, noise: number) {
  const count = 4000;
  const draws = randomDraws(5);
  const loss = Float64Array.from({ length: count }, () => mean + deviation * draws.normal());
  const losses = [loss, new Float64Array(count)];
  const question = { losses, shown: [loss], noise: [noise], probability: 0.9, pairs: [[0, 1]] as const };
  return valueOfInformation(question, 1000, randomDraws(6));
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
    // Of two choices the best is decided when their order is.
    expect(sharp.pairDecidedShares).toEqual([sharp.decidedShare]);
  });

  it("of two values is that of one with the noise of their mean, where both show the same", () => {
    const draws = randomDraws(11);
    const loss = Float64Array.from({ length: 4000 }, () => 0.2 + draws.normal());
    const losses = [loss, new Float64Array(loss.length)];
    const value = (shown: Float64Array[], noise: number[]) =>
      valueOfInformation({ losses, shown, noise, probability: 0.9, pairs: [] }, 800, randomDraws(12)).regretAfter;
    expect(Math.abs(value([loss, loss], [1, 1]) - value([loss], [Math.SQRT1_2]))).toBeLessThan(0.02);
  });

  it("finds nothing in a bias that both of two runs share, and all in their difference", () => {
    const draws = randomDraws(13);
    const first = Float64Array.from({ length: 8000 }, () => 0.1 * draws.normal());
    const bias = first.map(() => draws.normal());
    const losses = [first, new Float64Array(first.length)];
    const shown = [first.map((value, k) => value + bias[k]), bias];
    const both = valueOfInformation(
      { losses, shown, noise: [0.03, 0.03], probability: 0.9, pairs: [] },
      800,
      randomDraws(14),
    );
    const alone = valueOfInformation(
      { losses, shown: shown.slice(0, 1), noise: [0.03], probability: 0.9, pairs: [] },
      800,
      randomDraws(14),
    );
    const moved = 0.1 ** 2 / Math.hypot(0.1, 0.03 * Math.SQRT2);
    expect(Math.abs(both.regretNow - both.regretAfter - moved * linearLoss(0)) / 0.1).toBeLessThan(0.03);
    const movedAlone = 0.1 ** 2 / Math.hypot(0.1, 1, 0.03);
    expect(Math.abs(alone.regretNow - alone.regretAfter - movedAlone * linearLoss(0)) / 0.1).toBeLessThan(0.03);
  });

  it("refuses a measurement without noise", () => {
    expect(() => twoActions(0, 1, 0)).toThrow("must be above 0");
  });
});
