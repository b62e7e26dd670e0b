import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blindCodes } from "../../shared/jobs/trial/blindCodes";
import { friedmanTest } from "../../shared/jobs/trial/friedman";
import { planBalance } from "../../shared/jobs/trial/planBalance";
import { fewestPlayers, simulatedPower } from "../../shared/jobs/trial/powerSimulation";
import { fillScores } from "../../shared/jobs/trial/simulatedScores";
import { trialPlan } from "../../shared/jobs/trial/trialPlan";
import type { TrialSetup } from "../../shared/jobs/trial/trialSetup";
import { williamsDesign } from "../../shared/jobs/trial/williamsDesign";
import { randomDraws } from "../../shared/statistics/randomDraws";

describe("williamsDesign", () => {
  it("Williams 1949, four treatments: 1423, 2134, 3241, 4312", () => {
    const named = williamsDesign(4).map((sequence) => sequence.map((each) => each + 1).join(""));
    expect(named).toEqual(["1423", "2134", "3241", "4312"]);
  });

  it.each([2, 3, 4, 5, 6, 7, 8, 9, 10, 13])("%i treatments: every place and every neighbour equally often", (count) => {
    const design = williamsDesign(count);
    expect(design).toHaveLength(count % 2 === 0 ? count : 2 * count);
    const balance = planBalance(design, count);
    expect(balance.isPlaceBalanced).toBe(true);
    expect(balance.isCarryOverBalanced).toBe(true);
    expect(balance.afterCounts[0][1]).toBe(count % 2 === 0 ? 1 : 2);
  });
});

function setup(puckCount: number, playerCount: number, seed: number): TrialSetup {
  return {
    pucks: Array.from({ length: puckCount }, (_, i) => ({ name: `puck ${i}`, code: String(200 + i) })),
    players: Array.from({ length: playerCount }, (_, i) => `player ${i}`),
    activities: [
      { name: "pass", weight: 1, instruction: "" },
      { name: "flick", weight: 2, instruction: "" },
    ],
    scale: {
      lowest: 1,
      highest: 9,
      step: 1,
      question: "How did it play?",
      lowestMeans: "badly",
      highestMeans: "well",
      isHigherBetter: true,
    },
    seed,
    repeats: 1,
  };
}

describe("trialPlan", () => {
  it("is balanced at every activity when players are a multiple of the sequences, for any seed", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 7 }),
        fc.integer({ min: 1, max: 3 }),
        fc.integer(),
        (pucks, rounds, seed) => {
          const sequences = williamsDesign(pucks).length;
          const plan = trialPlan(setup(pucks, rounds * sequences, seed));
          for (const balance of plan.balanceByActivity) {
            expect(balance.isPlaceBalanced).toBe(true);
            expect(balance.isCarryOverBalanced).toBe(true);
          }
          expect(plan.sessions).toHaveLength(2 * rounds * sequences);
        },
      ),
      { numRuns: 30 },
    );
  });

  it("names the next balanced numbers of players, and equal seeds give equal plans", () => {
    const plan = trialPlan(setup(4, 10, 7));
    expect(plan.balancedPlayerCounts).toEqual([8, 12]);
    expect(plan.balanceByActivity[0].isPlaceBalanced).toBe(false);
    expect(trialPlan(setup(4, 10, 7))).toEqual(plan);
    expect(trialPlan(setup(4, 10, 8)).sessions).not.toEqual(plan.sessions);
  });
});

describe("blindCodes", () => {
  it("are unlike each other: other digits, no anagrams, none repeated, for any seed and count", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 26 }), fc.integer(), (count, seed) => {
        const codes = blindCodes(count, randomDraws(seed));
        expect(codes).toHaveLength(count);
        for (const code of codes) {
          expect(code).toMatch(/^[2-9]{3}$/);
          expect(new Set(code).size).toBe(3);
          for (const other of codes) {
            if (other === code) continue;
            expect([...code].filter((digit, i) => digit !== other[i]).length).toBeGreaterThanOrEqual(2);
            expect([...code].sort()).not.toEqual([...other].sort());
          }
        }
        expect(new Set(codes).size).toBe(count);
        if (count <= 8) expect(new Set(codes.map((code) => code[0])).size).toBe(count);
      }),
      { numRuns: 60 },
    );
  });

  it("do not tell the order: over many seeds the first code is as often the highest as chance has it", () => {
    const seeds = 2000;
    let highest = 0;
    for (let seed = 0; seed < seeds; seed++) {
      const codes = blindCodes(4, randomDraws(seed)).map(Number);
      if (codes[0] === Math.max(...codes)) highest++;
    }
    expect(Math.abs(highest / seeds - 0.25)).toBeLessThan(4 * Math.sqrt((0.25 * 0.75) / seeds));
  });
});

describe("simulatedPower", () => {
  const assumption = {
    means: [6, 5, 5, 4],
    spread: 1.5,
    playerSpread: 1,
    scale: { lowest: 1, highest: 9, step: 1 },
    significanceLevel: 0.05,
    rankings: 1,
  };
  const simulations = 600;

  // The same model simulated apart with NumPy and SciPy (friedmanchisquare, f.sf), 4000 trials each.
  it.each([
    [8, 0.4415, 0.797],
    [16, 0.7903, 0.918],
  ])(
    "%i players: power %f and right winner %f, as SciPy simulates within 4 standard errors",
    (players, power, first) => {
      const point = simulatedPower(assumption, players, simulations, 2);
      const tolerance = (p: number) => 4 * Math.sqrt(p * (1 - p) * (1 / simulations + 1 / 4000));
      expect(Math.abs(point.power - power)).toBeLessThan(tolerance(power));
      expect(Math.abs(point.bestFirstShare - first)).toBeLessThan(tolerance(first));
    },
  );

  it("few players: the power is that of the exact test, whose critical value for 3 players and 4 pucks is 7.4", () => {
    // Hollander & Wolfe (1999), table A.22: P(S >= 7.4) = 0.033 for k = 4, n = 3 without ties; the next value below, 7.0,
    // has 0.054. From memory.
    const fine = { ...assumption, scale: { lowest: -100, highest: 100, step: 1e-6 } };
    const draws = randomDraws(77);
    const scores = new Float64Array(12);
    let beyond = 0;
    for (let m = 0; m < simulations; m++) {
      fillScores(scores, fine, draws);
      const test = friedmanTest({ blockCount: 3, treatmentCount: 4, scores });
      if (test.ok && test.value.statistic > 7.2) beyond++;
    }
    const expected = beyond / simulations;
    const { power, pairPower } = simulatedPower(fine, 3, simulations, 78);
    expect(Math.abs(power - expected)).toBeLessThan(4 * Math.sqrt((2 * expected * (1 - expected)) / simulations));
    // Three players who all agree give p = 2 / 2^3 for a pair: none can be shown.
    expect(pairPower).toBe(0);
  });

  it("several rankings share the level: the power of one activity falls", () => {
    const alone = simulatedPower(assumption, 8, 500, 5).power;
    const shared = simulatedPower({ ...assumption, rankings: 4 }, 8, 500, 5).power;
    expect(shared).toBeLessThan(alone - 0.1);
  });

  it("equal pucks are found different at the significance level only", () => {
    const { power } = simulatedPower({ ...assumption, means: [5, 5, 5, 5] }, 10, simulations, 4);
    expect(Math.abs(power - 0.05)).toBeLessThan(4 * Math.sqrt((0.05 * 0.95) / simulations));
  });

  it("fewestPlayers asks that the power stays up", () => {
    const point = (playerCount: number, power: number) => ({
      playerCount,
      power,
      pairPower: power,
      bestFirstShare: 1,
      standardError: 0.01,
    });
    expect(fewestPlayers([point(4, 0.5), point(8, 0.81), point(12, 0.79), point(16, 0.85)], 0.8)).toBe(16);
    expect(fewestPlayers([point(4, 0.5)], 0.8)).toBeNull();
  });
});
