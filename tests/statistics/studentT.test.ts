import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverageFactor, normalFactor95 } from "../../shared/statistics/studentT";

/** JCGM 100:2008, table G.2: t_p(nu), printed to two or three decimals; p of 68.27, 95.45 and 99.73 % are 1, 2 and 3 sigma. */
const coverages = [0.682689492, 0.9, 0.95, 0.954499736, 0.99, 0.997300204];
const tableG2: readonly (readonly [degrees: number, printed: readonly string[]])[] = [
  [1, ["1.84", "6.31", "12.71", "13.97", "63.66", "235.80"]],
  [2, ["1.32", "2.92", "4.30", "4.53", "9.92", "19.21"]],
  [3, ["1.20", "2.35", "3.18", "3.31", "5.84", "9.22"]],
  [4, ["1.14", "2.13", "2.78", "2.87", "4.60", "6.62"]],
  [5, ["1.11", "2.02", "2.57", "2.65", "4.03", "5.51"]],
  [6, ["1.09", "1.94", "2.45", "2.52", "3.71", "4.90"]],
  [7, ["1.08", "1.89", "2.36", "2.43", "3.50", "4.53"]],
  [8, ["1.07", "1.86", "2.31", "2.37", "3.36", "4.28"]],
  [9, ["1.06", "1.83", "2.26", "2.32", "3.25", "4.09"]],
  [10, ["1.05", "1.81", "2.23", "2.28", "3.17", "3.96"]],
  [20, ["1.03", "1.72", "2.09", "2.13", "2.85", "3.42"]],
  [30, ["1.02", "1.70", "2.04", "2.09", "2.75", "3.27"]],
  [50, ["1.01", "1.68", "2.01", "2.05", "2.68", "3.16"]],
  [100, ["1.005", "1.660", "1.984", "2.025", "2.626", "3.077"]],
  [Number.POSITIVE_INFINITY, ["1.000", "1.645", "1.960", "2.000", "2.576", "3.000"]],
];

describe("coverageFactor(coverage, degreesOfFreedom)", () => {
  it.each(tableG2)("JCGM 100:2008, table G.2, row of %f degrees of freedom, to the digits printed", (degrees, row) => {
    row.forEach((printed, i) => {
      const decimals = printed.split(".")[1].length;
      const off = Math.abs(coverageFactor(coverages[i], degrees) - Number(printed));
      expect(off, `p = ${coverages[i]}`).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
    });
  });

  it("is tan(pi p / 2) for one degree of freedom and p sqrt(2 / (1 - p^2)) for two, 1e-11", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 0.999, noNaN: true }), (p) => {
        expect(Math.abs(coverageFactor(p, 1) / Math.tan((Math.PI * p) / 2) - 1)).toBeLessThan(1e-11);
        expect(Math.abs(coverageFactor(p, 2) / (p * Math.sqrt(2 / (1 - p * p))) - 1)).toBeLessThan(1e-11);
      }),
    );
  });

  it("has no step where the expansion for many degrees of freedom begins, 1e-11", () => {
    for (const p of [0.5, 0.95, 0.999]) {
      const below = coverageFactor(p, 2000 * (1 - 1e-12));
      expect(Math.abs(below / coverageFactor(p, 2000) - 1)).toBeLessThan(1e-11);
    }
  });

  it("is the normal distribution's 1.959963985 at infinity (Abramowitz & Stegun (1964), table 26.6)", () => {
    expect(coverageFactor(0.95, Number.POSITIVE_INFINITY)).toBeCloseTo(1.95996398, 8);
    expect(coverageFactor(0.95, Number.POSITIVE_INFINITY)).toBeCloseTo(normalFactor95, 14);
  });

  it("refuses what is no probability and no degrees of freedom", () => {
    expect(() => coverageFactor(1, 5)).toThrow("coverage is 1");
    expect(() => coverageFactor(0.95, 0)).toThrow("degrees of freedom are 0");
  });
});
