import { describe, expect, it } from "vitest";
import { randomDraws } from "../../shared/statistics/randomDraws";
import { kendallTauB, rankCorrelations, smallestOrderP, spearmanRho } from "../../shared/statistics/rankCorrelation";
import { sharedRanks } from "../../shared/statistics/ranks";

function correlated(x: readonly number[], y: readonly number[]) {
  const found = rankCorrelations(x, y, randomDraws(1));
  if (!found.ok) throw new Error(found.problem.message);
  return found.value;
}

describe("rank correlations with their permutation p", () => {
  it("four items in perfect order: p 2/24, the least that four can give; R cor.test", () => {
    const { spearman, kendall } = correlated([1, 2, 3, 4], [10, 20, 30, 40]);
    expect(spearman.coefficient).toBeCloseTo(1, 12);
    for (const each of [spearman, kendall]) {
      expect(each.pValue).toBeCloseTo(2 / 24, 12);
      expect(each.smallestP).toBeCloseTo(2 / 24, 12);
    }
  });

  it("seven items: R cor.test, rho 0.8214 p 0.03413, tau 0.6190 p 0.06905", () => {
    const { spearman, kendall } = correlated([1, 2, 3, 4, 5, 6, 7], [2, 1, 4, 3, 7, 5, 6]);
    expect(spearman.coefficient).toBeCloseTo(0.82142857143, 10);
    expect(spearman.pValue).toBeCloseTo(0.03412698413, 10);
    expect(kendall.coefficient).toBeCloseTo(0.61904761905, 10);
    expect(kendall.pValue).toBeCloseTo(0.06904761905, 10);
  });

  it("nine items: R cor.test exact, rho 0.8333 p 0.008267, tau 0.6111 p 0.02474", () => {
    const { spearman, kendall } = correlated([1, 2, 3, 4, 5, 6, 7, 8, 9], [3, 1, 2, 6, 5, 4, 9, 7, 8]);
    expect(spearman.pValue).toBeCloseTo(0.008267195767, 10);
    expect(kendall.pValue).toBeCloseTo(0.0247409612, 9);
    expect(spearman.method).toBe("exact");
  });

  it("ties on both sides: SciPy over all permutations, rho 0.95533 p 0.02222, tau-b 0.88950 p 0.02222", () => {
    const { spearman, kendall } = correlated([3.1, 2.2, 2.2, 1.0, 0.4, 5.0], [8, 6, 7, 3, 3, 8]);
    expect(spearman.coefficient).toBeCloseTo(0.9553302944424513, 12);
    expect(spearman.pValue).toBeCloseTo(0.02222222222, 10);
    expect(kendall.coefficient).toBeCloseTo(0.8894991799933215, 12);
    expect(kendall.pValue).toBeCloseTo(0.02222222222, 10);
  });

  it("twelve items: drawn permutations within 4 standard errors of R's exact tau p 0.000499", () => {
    const { kendall } = correlated([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], [2, 1, 5, 3, 4, 8, 6, 7, 12, 9, 11, 10]);
    expect(kendall.coefficient).toBeCloseTo(0.727272727273, 10);
    expect(kendall.method).toBe("permuted");
    expect(Math.abs(kendall.pValue - 0.000498883511)).toBeLessThan(4 * (kendall.standardError ?? 0) + 1 / 20_001);
  });

  // Kendall & Gibbons (1990) and Zar (1999), tables of critical values, from memory: 5 % both sides from five items on.
  it.each([
    [3, 2 / 6],
    [4, 2 / 24],
    [5, 2 / 120],
  ])("%i items cannot give a p below %f", (count, least) => {
    const x = Array.from({ length: count }, (_, i) => i);
    expect(correlated(x, [...x].reverse()).spearman.smallestP).toBeCloseTo(least, 12);
  });

  it("the least p with ties is the one that counting all orders finds, and holds for ten items as well", () => {
    for (const y of [
      [1, 1, 2, 3, 4, 5],
      [1, 1, 1, 1, 1, 2],
      [1, 1, 2, 2, 3, 3],
    ]) {
      const [a, b] = [sharedRanks([1, 2, 3, 4, 4, 5]), sharedRanks(y)];
      const counted = correlated([1, 2, 3, 4, 4, 5], y);
      expect(smallestOrderP(a, b, spearmanRho)).toBeCloseTo(counted.spearman.smallestP, 10);
      expect(smallestOrderP(a, b, kendallTauB)).toBeCloseTo(counted.kendall.smallestP, 10);
    }
    // One item apart from nine equal ones: it comes first or last in 2 of 10 places.
    const { smallestP } = correlated([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], [1, 1, 1, 1, 1, 1, 1, 1, 1, 2]).spearman;
    expect(smallestP).toBeCloseTo(0.2, 10);
  });

  it("refuses two items and equal values in words", () => {
    expect(rankCorrelations([1, 2], [1, 2], randomDraws(1))).toMatchObject({ ok: false });
    expect(rankCorrelations([1, 1, 1], [1, 2, 3], randomDraws(1))).toMatchObject({ ok: false });
  });
});
