import { describe, expect, it } from "vitest";
import { acceptability } from "../../shared/jobs/choice/acceptability";
import { decisionBetween, turningWeight } from "../../shared/jobs/choice/decision";
import { partialValues } from "../../shared/jobs/choice/partialValues";
import { weightDraws } from "../../shared/jobs/choice/weightDraws";
import { commonDraws } from "../../shared/statistics/commonDraws";
import { type RandomDraws, randomDraws } from "../../shared/statistics/randomDraws";

const draws = 20_000;
const anyWeights = (count: number, seed = 1) =>
  weightDraws(new Array<null>(count).fill(null), draws, commonDraws({ draws, seed }));

/** Gamma(n) of whole n as a sum of exponential draws; beta draws as their ratio. Source: Devroye (1986), ch. IX. */
function beta(a: number, b: number, random: RandomDraws): Float64Array {
  const gamma = (n: number) => {
    let sum = 0;
    for (let i = 0; i < n; i++) sum -= Math.log1p(-random.uniform());
    return sum;
  };
  return Float64Array.from({ length: draws }, () => {
    const x = gamma(a);
    return x / (x + gamma(b));
  });
}

/**
 * Two anticoagulants by three events. Events of 136 and 129 patients: 20 and 8, 40 and 32, 1 and 5; values fall from 1 to
 * 0 over 0 to 0.25, 0.15 to 0.4 and 0 to 0.1. Published results: van Valkenhoef (2013), worked example of the
 * documentation of acceptability analysis in R, 10 000 draws: first 0.350 and 0.650; central weights and confidence below;
 * under weights 0.5, 0.2, 0.3 first in 0.128 and 0.872.
 */
describe("two anticoagulants, van Valkenhoef (2013)", () => {
  const random = randomDraws(11);
  const events = [
    [beta(20, 116, random), beta(40, 96, random), beta(1, 135, random)],
    [beta(8, 121, random), beta(32, 97, random), beta(5, 124, random)],
  ];
  const scales = [
    { worst: 0.25, best: 0 },
    { worst: 0.4, best: 0.15 },
    { worst: 0.1, best: 0 },
  ];
  const values = events.map((own) =>
    own.map(
      (column, j) => partialValues({ sense: "least", target: null, scale: "linear", ...scales[j] }, [column]).values[0],
    ),
  );

  it("ranks, central weights and confidence factors as published, to the error of both samplings", () => {
    const found = acceptability(values, anyWeights(3));
    expect(Math.abs(found.rankShares[0][0] - 0.3504)).toBeLessThan(0.015);
    expect(Math.abs(found.rankShares[1][0] - 0.6496)).toBeLessThan(0.015);
    const published = [
      [0.187, 0.277, 0.536],
      [0.407, 0.364, 0.229],
    ];
    published.forEach((weights, i) => {
      weights.forEach((weight, j) => {
        expect(Math.abs(found.centralWeights[i]![j] - weight)).toBeLessThan(0.015);
      });
    });
    expect(Math.abs(found.confidence[0]! - 0.6682)).toBeLessThan(0.02);
    expect(Math.abs(found.confidence[1]! - 0.8956)).toBeLessThan(0.02);
  });

  it("and under weights 0.5, 0.2 and 0.3", () => {
    const weights = [0.5, 0.2, 0.3].map((weight) => new Float64Array(draws).fill(weight));
    expect(Math.abs(acceptability(values, weights).rankShares[1][0] - 0.8721)).toBeLessThan(0.01);
  });
});

describe("values without uncertainty have closed forms", () => {
  const fixed = (rows: readonly (readonly number[])[]) =>
    rows.map((row) => row.map((value) => new Float64Array(draws).fill(value)));

  it("two criteria: the first wins while w > 1/3, in 2/3 of all weights, with central weight 2/3; the other 1/6", () => {
    // (1, 0) against (0, 1/2): w > (1 - w) / 2.
    const found = acceptability(
      fixed([
        [1, 0],
        [0, 0.5],
      ]),
      anyWeights(2),
    );
    expect(found.rankShares[0][0]).toBeCloseTo(2 / 3, 2);
    expect(found.centralWeights[0]![0]).toBeCloseTo(2 / 3, 2);
    expect(found.centralWeights[1]![0]).toBeCloseTo(1 / 6, 2);
    expect(found.confidence).toEqual([1, 1]);
  });

  it("three alike specialists are first in a third each, with central weights 11/18, 7/36, 7/36", () => {
    const found = acceptability(
      fixed([
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ]),
      anyWeights(3),
    );
    for (const shares of found.rankShares) expect(shares[0]).toBeCloseTo(1 / 3, 2);
    // Mean of the largest of three spacings of a stick: (1 + 1/2 + 1/3) / 3.
    expect(found.centralWeights[1]![1]).toBeCloseTo(11 / 18, 2);
    expect(found.centralWeights[1]![0]).toBeCloseTo(7 / 36, 2);
  });

  it("a dominated candidate never is first and has no central weights; equals share", () => {
    const found = acceptability(
      fixed([
        [1, 1],
        [0.9, 1],
        [1, 1],
      ]),
      anyWeights(2),
    );
    expect(found.rankShares.map(([first]) => first)).toEqual([0.5, 0, 0.5].map((share) => expect.closeTo(share, 9)));
    expect(found.centralWeights[1]).toBeNull();
    expect(found.rankShares[1][2]).toBeCloseTo(1, 9);
  });
});

describe("weights", () => {
  it("of no preference are even over the simplex: mean 1/n, variance (n - 1) / (n^2 (n + 1)) (Dirichlet)", () => {
    const [first] = anyWeights(4);
    const mean = first.reduce((sum, w) => sum + w, 0) / draws;
    expect(mean).toBeCloseTo(1 / 4, 2);
    expect(first.reduce((sum, w) => sum + (w - mean) ** 2, 0) / draws).toBeCloseTo(3 / (16 * 5), 3);
  });

  it("of swings keep their ratios, Belton & Stewart (2002): swings 100, 50 and 25 are 4/7, 2/7 and 1/7", () => {
    const known = (value: number) => ({ from: value, to: value, spacing: "linear" as const });
    const weights = weightDraws([known(100), known(50), known(25)], 100, commonDraws({ draws: 100, seed: 1 }));
    expect(weights.map((column) => column[7])).toEqual([4 / 7, 2 / 7, 1 / 7].map((w) => expect.closeTo(w, 12)));
  });

  it("of swing ranges stay within the ratios that the ranges allow", () => {
    const range = { from: 40, to: 80, spacing: "linear" as const };
    const [a, b] = weightDraws(
      [{ from: 100, to: 100, spacing: "linear" }, range],
      draws,
      commonDraws({ draws, seed: 3 }),
    );
    const ratios = b.map((w, k) => w / a[k]);
    expect(Math.min(...ratios)).toBeGreaterThanOrEqual(0.4);
    expect(Math.max(...ratios)).toBeLessThanOrEqual(0.8 + 1e-12);
  });
});

describe("partial values", () => {
  const columns = [Float64Array.of(10, 10), Float64Array.of(1000, 1000)];

  it("are 0 at the worst and 1 at the best of the candidates, by sense", () => {
    const open = { target: null, worst: null, best: null, scale: "linear" } as const;
    expect(partialValues({ sense: "most", ...open }, columns).values.map(([v]) => v)).toEqual([
      expect.closeTo(0, 12),
      expect.closeTo(1, 12),
    ]);
    expect(partialValues({ sense: "least", ...open }, columns).values.map(([v]) => v)).toEqual([
      expect.closeTo(1, 12),
      expect.closeTo(0, 12),
    ]);
    expect(partialValues({ sense: "near", ...open, target: 900 }, columns).values.map(([v]) => v)).toEqual([
      expect.closeTo(0, 12),
      expect.closeTo(1, 12),
    ]);
  });

  it("of a logarithm give half the value to the geometric mean", () => {
    const { values } = partialValues({ sense: "most", target: null, worst: 10, best: 1000, scale: "log" }, [
      Float64Array.of(100),
    ]);
    expect(values[0][0]).toBeCloseTo(0.5, 12);
  });
});

describe("what decides between two", () => {
  it("turns where the weighted gaps add up to nothing: gaps 1 and -1/2 turn at w = 1/3 and 2/3", () => {
    expect(turningWeight([1, -0.5], [0.6, 0.4], 0)).toBeCloseTo(1 / 3, 12);
    expect(turningWeight([1, -0.5], [0.6, 0.4], 1)).toBeCloseTo(2 / 3, 12);
    expect(turningWeight([1, 0.5], [0.6, 0.4], 0)).toBeNull();
  });

  it("shares of the variance add up to 100 %, and all of it lies where the only uncertainty is", () => {
    const random = randomDraws(5);
    const noisy = Float64Array.from({ length: 1000 }, () => random.normal());
    const still = new Float64Array(1000).fill(0.4);
    const weights = [new Float64Array(1000).fill(0.5), new Float64Array(1000).fill(0.5)];
    const found = decisionBetween(
      { name: "A", values: [noisy, still] },
      { name: "B", values: [still, still] },
      0.5,
      weights,
      ["one", "two"],
    );
    expect(found.criteria[0].varianceSharePercent).toBeCloseTo(100, 9);
    expect(found.criteria[1].varianceSharePercent).toBeCloseTo(0, 9);
  });
});
