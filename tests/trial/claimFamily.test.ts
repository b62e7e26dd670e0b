import { expect, test } from "vitest";
import { familyP } from "../../shared/jobs/trial/claimFamily";
import { pairStrengths } from "../../shared/jobs/trial/pairStrengths";
import { rankPucks } from "../../shared/jobs/trial/rankPucks";
import { addPairs, noPairs, overallScores } from "../../shared/jobs/trial/scoreMatrix";
import { fillScores } from "../../shared/jobs/trial/simulatedScores";
import { strengthBands } from "../../shared/jobs/trial/strengthBands";
import { randomDraws } from "../../shared/statistics/randomDraws";

const alike = { means: [5, 5, 5], spread: 1.5, playerSpread: 1, scale: { lowest: 1, highest: 9, step: 1 } };

test("trials of three activities with equal pucks hold a false claim in no more than 5 % of them", () => {
  const [trials, players, pucks] = [250, 5, 3];
  const draws = randomDraws(31);
  const analysis = { significanceLevel: 0.05, bootstrapSamples: 1, bandCoverage: 0.9, permutations: 99 };
  let [withFalseClaim, eachAlone] = [0, 0];
  for (let trial = 0; trial < trials; trial++) {
    const likings = Array.from({ length: 3 }, () => {
      const scores = new Float64Array(players * pucks);
      fillScores(scores, alike, draws);
      return { blockCount: players, treatmentCount: pucks, scores };
    });
    const rankings = [...likings, overallScores(likings, [1, 1, 1])].map((liking) =>
      rankPucks(
        {
          activity: "one",
          liking,
          pairs: Array.from({ length: players }, () => noPairs(pucks)),
          medians: null,
          codes: ["A", "B", "C"],
          rankings: 4,
        },
        analysis,
        draws,
      ),
    );
    const claims = rankings.some(
      ({ test: own, pairs }) => (own?.familyP ?? 1) <= 0.05 || pairs.some((one) => one.isShown),
    );
    if (claims) withFalseClaim++;
    if (rankings.some(({ test: own }) => (own?.pValue ?? 1) <= 0.05)) eachAlone++;
  }
  const error = Math.sqrt((0.05 * 0.95) / trials);
  expect(withFalseClaim / trials).toBeLessThan(0.05 + 3 * error);
  // Each at 5 % by itself: the chance of one in four would be far beyond that.
  expect(eachAlone / trials).toBeGreaterThan(0.05 + 3 * error);
});

test("a claim allows for all rankings, and a pair for the test of its ranking as well", () => {
  expect(familyP(0.01, 4)).toBeCloseTo(0.04, 15);
  expect(familyP(0.001, 4, 0.03)).toBe(0.03);
  expect(familyP(0.4, 4)).toBe(1);
});

test("bands of strengths hold the true ones about as often as they say, with 6 players as well", () => {
  const assumed = {
    means: [5, 4.5, 4, 3.5],
    spread: 1.5,
    playerSpread: 0.7,
    scale: { lowest: 1, highest: 7, step: 1 },
  };
  const pucks = 4;
  const panel = (players: number, draws: ReturnType<typeof randomDraws>) => {
    const scores = new Float64Array(players * pucks);
    fillScores(scores, assumed, draws);
    return Array.from({ length: players }, (_, i) => Array.from(scores.subarray(i * pucks, (i + 1) * pucks)));
  };
  const endless = noPairs(pucks);
  for (const row of panel(50_000, randomDraws(1))) addPairs(endless, row, 1);
  const found = pairStrengths(endless, 0);
  if (!found.ok) throw new Error(found.problem.message);
  const draws = randomDraws(2);
  let [held, all] = [0, 0];
  for (let trial = 0; trial < 120; trial++) {
    const players = panel(6, draws).map((row) => {
      const pairs = noPairs(pucks);
      addPairs(pairs, row, 1);
      return pairs;
    });
    const bands = strengthBands(players, 200, 0.9, draws);
    if (!bands.ok) throw new Error(bands.problem.message);
    bands.value.bands.forEach(({ low, high }, j) => {
      all++;
      if (low <= found.value.strengths[j] && found.value.strengths[j] <= high) held++;
    });
  }
  expect(held / all).toBeGreaterThan(0.83);
  expect(held / all).toBeLessThan(0.96);
});
