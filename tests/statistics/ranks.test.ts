import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { holmCorrection } from "../../shared/statistics/holmCorrection";
import { sharedRanks, tieSum } from "../../shared/statistics/ranks";

describe("sharedRanks(values)", () => {
  it("equal values share the mean of their ranks", () => {
    expect(sharedRanks([3.1, 2.2, 2.2, 1, 0.4, 5])).toEqual([5, 3.5, 3.5, 2, 1, 6]);
    expect(sharedRanks([])).toEqual([]);
  });

  it("is one more than the values below and half the others alike, for any values", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -3, max: 3 }), { maxLength: 15 }), (values) => {
        const expected = values.map((value) => {
          const below = values.filter((other) => other < value).length;
          const alike = values.filter((other) => other === value).length;
          return 1 + below + (alike - 1) / 2;
        });
        expect(sharedRanks(values)).toEqual(expected);
      }),
    );
  });

  it("tieSum adds t^3 - t of each group of equal values: groups of 2 and 3 give 6 + 24", () => {
    expect(tieSum([1, 4, 4, 7, 7, 7])).toBe(30);
    expect(tieSum([1, 2, 3])).toBe(0);
  });
});

describe("holmCorrection(pValues)", () => {
  it("Holm (1979), steps by hand: 0.01, 0.04, 0.03, 0.005 become 0.03, 0.06, 0.06, 0.02", () => {
    const found = holmCorrection([0.01, 0.04, 0.03, 0.005]);
    [0.03, 0.06, 0.06, 0.02].forEach((expected, i) => {
      expect(found[i]).toBeCloseTo(expected, 15);
    });
  });

  it("Marcus, Peritz & Gabriel (1976): is the closed test of Bonferroni, the worst of all sets that hold the test", () => {
    const p = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(p, { maxLength: 7 }), (pValues) => {
        const n = pValues.length;
        const expected = new Array<number>(n).fill(0);
        for (let set = 1; set < 2 ** n; set++) {
          const members = pValues.map((_, i) => i).filter((i) => (set >> i) & 1);
          const bonferroni = Math.min(1, members.length * Math.min(...members.map((i) => pValues[i])));
          for (const i of members) expected[i] = Math.max(expected[i], bonferroni);
        }
        holmCorrection(pValues).forEach((found, i) => {
          expect(found).toBeCloseTo(expected[i], 14);
        });
      }),
    );
  });
});
