import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockScores } from "../../shared/jobs/trial/blockScores";
import { exactFriedmanP } from "../../shared/jobs/trial/exactFriedman";
import { friedmanTest } from "../../shared/jobs/trial/friedman";
import { permutedBlocksP } from "../../shared/jobs/trial/permutedBlocks";
import { skillingsMackDesign, skillingsMackTest } from "../../shared/jobs/trial/skillingsMack";
import { randomDraws } from "../../shared/statistics/randomDraws";
import { metronome, roundingTimes, tiedScores } from "./publishedData";

function value<T>(result: { ok: true; value: T } | { ok: false; problem: { message: string } }): T {
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}

describe("Friedman's test", () => {
  it("Hollander & Wolfe 1973, rounding first base: 11.14 with 2 degrees of freedom, p 0.0038; R friedman.test to 1e-9", () => {
    const test = value(friedmanTest(blockScores(roundingTimes)));
    expect(test.statistic).toBeCloseTo(11.14, 2);
    expect(test.statistic).toBeCloseTo(11.142857142857, 9);
    expect(test.degreesOfFreedom).toBe(2);
    expect(test.chiSquareP).toBeCloseTo(0.003805040776, 9);
    // Published rank sums 53, 47, 32, the least time being rank 1; here the largest value is.
    expect(test.rankSums).toEqual([88 - 53, 88 - 47, 88 - 32]);
  });

  it("Iman & Davenport 1980: F and p of the same data as R computes them from its chi-square", () => {
    const test = value(friedmanTest(blockScores(roundingTimes)));
    expect(test.fStatistic).toBeCloseTo(7.121739130435, 9);
    expect(test.fP).toBeCloseTo(0.002171298388, 9);
    expect(test.kendallW).toBeCloseTo(11.142857142857 / 44, 9);
  });

  it("scores with many ties: R friedman.test and SciPy friedmanchisquare, 12.0476, p 0.00722", () => {
    const test = value(friedmanTest(blockScores(tiedScores)));
    expect(test.statistic).toBeCloseTo(12.047619047619, 9);
    expect(test.chiSquareP).toBeCloseTo(0.007221805206, 9);
  });

  it("players who all agree have W = 1, opposites W = 0", () => {
    expect(
      value(
        friedmanTest(
          blockScores([
            [1, 2, 3],
            [4, 5, 6],
          ]),
        ),
      ).kendallW,
    ).toBeCloseTo(1, 12);
    expect(
      value(
        friedmanTest(
          blockScores([
            [1, 2, 3],
            [3, 2, 1],
          ]),
        ),
      ).kendallW,
    ).toBeCloseTo(0, 12);
  });

  it("refuses all-tied scores and single players in words, missing ones by a throw", () => {
    expect(
      friedmanTest(
        blockScores([
          [1, 1],
          [2, 2],
        ]),
      ),
    ).toMatchObject({ ok: false, problem: { code: "all-tied" } });
    expect(friedmanTest(blockScores([[1, 2]]))).toMatchObject({ ok: false, problem: { code: "few-blocks" } });
    expect(() =>
      friedmanTest(
        blockScores([
          [1, null],
          [2, 1],
        ]),
      ),
    ).toThrow(RangeError);
  });
});

describe("exact p of Friedman's test", () => {
  // Siegel (1956), table N (after Friedman 1937), from memory: p of the statistic, three digits.
  it.each([
    {
      rows: [
        [3, 2, 1],
        [3, 2, 1],
        [3, 2, 1],
      ],
      statistic: 6,
      p: 0.028,
    },
    {
      rows: [
        [3, 2, 1],
        [3, 2, 1],
        [3, 2, 1],
        [3, 2, 1],
      ],
      statistic: 8,
      p: 0.0046,
    },
    {
      rows: [
        [3, 2, 1],
        [3, 2, 1],
        [3, 2, 1],
        [2, 3, 1],
      ],
      statistic: 6.5,
      p: 0.042,
    },
    {
      rows: [
        [4, 3, 2, 1],
        [4, 3, 2, 1],
      ],
      statistic: 6,
      p: 0.042,
    },
    {
      rows: [
        [4, 3, 2, 1],
        [4, 3, 2, 1],
        [4, 3, 2, 1],
      ],
      statistic: 9,
      p: 0.0017,
    },
  ])("Siegel 1956 table N: statistic $statistic has p $p", ({ rows, statistic, p }) => {
    expect(value(friedmanTest(blockScores(rows))).statistic).toBeCloseTo(statistic, 9);
    expect(Math.abs((exactFriedmanP(blockScores(rows)) ?? 1) - p)).toBeLessThan(5.1e-4);
  });

  it("ties: agrees with 400 000 permutations of NumPy 0.00277 +- 0.00008 within 4 standard errors", () => {
    const p = exactFriedmanP(blockScores(tiedScores)) ?? 1;
    expect(Math.abs(p - 0.0027675)).toBeLessThan(4 * Math.sqrt((0.0027675 * 0.9972) / 400_000));
  });

  it("counted over sorted sums it is what going through every deal gives", () => {
    const grid = fc.array(fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 3, maxLength: 3 }), {
      minLength: 2,
      maxLength: 4,
    });
    fc.assert(
      fc.property(grid, (rows) => {
        const data = blockScores(rows);
        const test = friedmanTest(data);
        if (!test.ok) return;
        expect(exactFriedmanP(data)).toBeCloseTo(bruteForceP(rows), 10);
      }),
      { numRuns: 60 },
    );
  });

  it("gives up, instead of hanging, where there are too many ways", () => {
    const rows = Array.from({ length: 60 }, (_, i) => Array.from({ length: 9 }, (_, j) => (i * j) % 10));
    expect(exactFriedmanP(blockScores(rows))).toBeNull();
  });

  it("random permutations agree with it within 4 of their own standard errors", () => {
    const design = value(skillingsMackDesign(blockScores(tiedScores)));
    const permuted = permutedBlocksP(design.adjustedRanks, 4, design.statistic, 20_000, randomDraws(3));
    const exact = exactFriedmanP(blockScores(tiedScores)) ?? 1;
    expect(Math.abs(permuted.pValue - exact)).toBeLessThan(4 * permuted.standardError + 1 / 20_000);
  });
});

/** p by dealing every block's values in every order. */
function bruteForceP(rows: readonly (readonly number[])[]): number {
  const orders = (values: readonly number[]): number[][] =>
    values.length === 0
      ? [[]]
      : values.flatMap((first, i) => orders(values.filter((_, j) => j !== i)).map((rest) => [first, ...rest]));
  const limit = value(friedmanTest(blockScores(rows))).statistic;
  let asFar = 0;
  let all = 0;
  const deal = (done: number[][]) => {
    if (done.length === rows.length) {
      all++;
      if (value(friedmanTest(blockScores(done))).statistic >= limit - 1e-9) asFar++;
      return;
    }
    for (const order of orders(rows[done.length])) deal([...done, order]);
  };
  deal([]);
  return asFar / all;
}

describe("the test of Skillings and Mack", () => {
  it("Hollander & Wolfe 1999, example 7.8 (Brady 1969): 13.28095, p 0.001306, as PMCMRplus documents", () => {
    const test = value(skillingsMackTest(blockScores(metronome)));
    expect(test.statistic).toBeCloseTo(13.28095, 5);
    expect(test.chiSquareP).toBeCloseTo(0.001306405, 8);
    expect(test.usedBlocks).toBe(8);
  });

  it("many cells missing, five treatments: 12.53551, p 0.01378, as PMCMRplus gives", () => {
    const rows = [
      [3, 5, 15, null, 4],
      [1, 3, null, null, null],
      [5, 4, 21, 5, null],
      [2, null, 6, null, null],
      [0, 2, 17, null, null],
      [0, 2, 10, null, null],
      [0, 3, null, 5, null],
      [0, 2, 13, null, null],
    ];
    const test = value(skillingsMackTest(blockScores(rows)));
    expect(test.statistic).toBeCloseTo(12.53551, 5);
    expect(test.chiSquareP).toBeCloseTo(0.01378318, 7);
  });

  it("is Friedman's where nothing is missing and nothing tied", () => {
    fc.assert(
      fc.property(
        fc.array(fc.shuffledSubarray([1, 2, 3, 4], { minLength: 4 }), { minLength: 2, maxLength: 8 }),
        (rows) => {
          const [a, b] = [value(skillingsMackTest(blockScores(rows))), value(friedmanTest(blockScores(rows)))];
          expect(a.statistic).toBeCloseTo(b.statistic, 8);
        },
      ),
    );
  });

  it("says so when pucks were never compared", () => {
    const rows = [
      [1, 2, null, null],
      [null, null, 3, 4],
    ];
    expect(skillingsMackTest(blockScores(rows))).toMatchObject({ ok: false, problem: { code: "not-compared" } });
  });
});
