import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type PairCounts, pairStrengths } from "../../shared/jobs/trial/pairStrengths";
import { signedRankTest } from "../../shared/statistics/signedRank";
import { baseballGames, baseballTeams, springall } from "./publishedData";

function counted(
  itemCount: number,
  outcomes: readonly (readonly [number, number, number, number, number])[],
): PairCounts {
  const wins = new Float64Array(itemCount * itemCount);
  const ties = new Float64Array(itemCount * itemCount);
  for (const [i, j, over, under, tied] of outcomes) {
    wins[i * itemCount + j] += over;
    wins[j * itemCount + i] += under;
    ties[i * itemCount + j] += tied;
    ties[j * itemCount + i] += tied;
  }
  return { itemCount, wins, ties };
}

function strengthsOf(counts: PairCounts, pseudo = 0) {
  const found = pairStrengths(counts, pseudo);
  if (!found.ok) throw new Error(found.problem.message);
  return found.value;
}

describe("strengths from pairs", () => {
  it("Agresti 2002, section 10.6, baseball: 1.58, 1.44, 1.29, 1.25, 1.11, 0.68 over Baltimore; R BradleyTerry2 to 1e-7", () => {
    const counts = counted(
      7,
      baseballGames.map(([home, away, won, lost]) => [home, away, won, lost, 0] as const),
    );
    const { strengths, tieParameter } = strengthsOf(counts);
    const logs = strengths.map((each) => Math.log(each / strengths[0]));
    const published = {
      Milwaukee: 1.58,
      Detroit: 1.44,
      Toronto: 1.29,
      "New York": 1.25,
      Boston: 1.11,
      Cleveland: 0.68,
    };
    for (const [team, rating] of Object.entries(published)) {
      expect(Math.abs(logs[baseballTeams.indexOf(team)] - rating)).toBeLessThan(0.0051);
    }
    [0, 1.10769771, 0.68385277, 1.43640843, 1.58135588, 1.24761785, 1.29448512].forEach((expected, i) => {
      expect(logs[i]).toBeCloseTo(expected, 7);
    });
    expect(tieParameter).toBe(0);
  });

  it("Stigler 1994, citations between journals: -2.949, -0.480, 0.269 over Biometrika; R BradleyTerry2 to 1e-7", () => {
    // Biometrika, Comm. Statist., JASA, JRSS-B: times the first was cited by the second, and the other way round.
    const counts = counted(4, [
      [0, 1, 730, 33, 0],
      [0, 2, 498, 320, 0],
      [0, 3, 221, 284, 0],
      [1, 2, 68, 813, 0],
      [1, 3, 17, 276, 0],
      [2, 3, 142, 325, 0],
    ]);
    const { strengths } = strengthsOf(counts);
    [-2.9490724968, -0.4795697698, 0.2689540558].forEach((expected, i) => {
      expect(Math.log(strengths[i + 1] / strengths[0])).toBeCloseTo(expected, 7);
    });
  });

  it("Springall 1973 with ties by Davidson 1970: R, as a Poisson log-linear model (glm), to 1e-7", () => {
    const counts = counted(
      9,
      springall.map(([a, b, over, under, ties]) => [a - 1, b - 1, over, under, ties] as const),
    );
    const { strengths, tieParameter } = strengthsOf(counts);
    const expected = [
      0.139425068167, 0.014357863419, 0.005190226676, 0.093683009746, 0.020962557656, 0.008122841391, 0.502197760904,
      0.140109628579, 0.075951043463,
    ];
    expected.forEach((each, i) => {
      expect(strengths[i]).toBeCloseTo(each, 7);
    });
    expect(tieParameter).toBeCloseTo(0.8655486542, 7);
  });

  it("Turner et al. 2020, four items of which one only loses: 0, 0.518, 0.135, -1.154 with half a pseudo-comparison", () => {
    const counts = counted(4, [
      [0, 1, 1, 1, 0],
      [2, 0, 1, 0, 0],
      [0, 3, 1, 0, 0],
      [1, 2, 1, 0, 0],
    ]);
    expect(pairStrengths(counts, 0)).toMatchObject({ ok: false, problem: { code: "not-compared" } });
    const { strengths } = strengthsOf(counts, 0.5);
    [0.5184185, 0.1354707, -1.1537565].forEach((expected, i) => {
      expect(Math.log(strengths[i + 1] / strengths[0])).toBeCloseTo(expected, 6);
    });
  });

  it("two items: strengths in the ratio of wins and half the ties where nothing else is known", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }), (a, b) => {
        const { strengths } = strengthsOf(counted(2, [[0, 1, a, b, 0]]));
        expect(strengths[0]).toBeCloseTo(a / (a + b), 8);
      }),
    );
  });

  it("swapping all winners and losers turns the strengths upside down", () => {
    const cell = fc.integer({ min: 1, max: 9 });
    fc.assert(
      fc.property(cell, cell, cell, cell, cell, cell, cell, (a, b, c, d, e, f, t) => {
        const there = strengthsOf(
          counted(3, [
            [0, 1, a, b, t],
            [0, 2, c, d, 0],
            [1, 2, e, f, 1],
          ]),
        ).strengths;
        const back = strengthsOf(
          counted(3, [
            [0, 1, b, a, t],
            [0, 2, d, c, 0],
            [1, 2, f, e, 1],
          ]),
        ).strengths;
        expect(there[0] / there[1]).toBeCloseTo(back[1] / back[0], 6);
      }),
      { numRuns: 40 },
    );
  });
});

describe("Wilcoxon's signed-rank test", () => {
  it("Hollander & Wolfe 1973, depression scale, p. 29: sum 40 of 9 pairs, p 0.0391 both sides", () => {
    const x = [1.83, 0.5, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.3];
    const y = [0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29];
    const test = signedRankTest(Float64Array.from(x, (each, i) => each - y[i]));
    expect(test.positiveSum).toBe(40);
    expect(test.pValue).toBeCloseTo(0.0390625, 12);
  });

  it("ties: R wilcox.exact, sum 45, p 0.08984375", () => {
    const test = signedRankTest(Float64Array.of(2, 1, -1, 3, 1, 2, -2, 1, 4, 1));
    expect(test.positiveSum).toBe(45);
    expect(test.pValue).toBeCloseTo(0.08984375, 12);
  });

  it("zeros by Pratt: SciPy wilcoxon with zero_method pratt and all permutations, p 0.2109375", () => {
    const test = signedRankTest(Float64Array.of(2, 1, 0, -1, 3, 0, 1, 2, -2, 1));
    expect(test.positiveSum).toBe(39.5);
    expect(test.zeros).toBe(2);
    expect(test.pValue).toBeCloseTo(0.2109375, 12);
  });

  it("differences all of one sign give the least p there is, no differences p 1", () => {
    const test = signedRankTest(Float64Array.of(1, 2, 2, 5, 3));
    expect(test.pValue).toBeCloseTo(2 / 32, 12);
    expect(test.smallestP).toBe(test.pValue);
    expect(signedRankTest(Float64Array.of(0, 0)).pValue).toBe(1);
  });
});
