import fc from "fast-check";
import * as library from "simple-statistics";
import { describe, expect, it } from "vitest";
import { mean, quantileOfSorted, squaresAbout, standardDeviation } from "../../shared/statistics/sample";

const values = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 2, maxLength: 20 });

describe("figures of a sample", () => {
  it("mean, squares and standard deviation agree with the library simple-statistics, for any values", () => {
    fc.assert(
      fc.property(values, (list) => {
        expect(mean(list)).toBeCloseTo(library.mean(list), 10);
        expect(squaresAbout(list, mean(list))).toBeCloseTo(library.sumNthPowerDeviations(list, 2), 7);
        expect(standardDeviation(list)).toBeCloseTo(library.sampleStandardDeviation(list), 8);
      }),
    );
  });

  // JCGM 100:2008, 4.4.3, table 1: twenty readings of temperature, mean 100.14 and s 1.49 degrees Celsius.
  it("JCGM 100:2008, 4.4.3: twenty readings have the mean 100.14 and the deviation 1.49", () => {
    const readings = [
      96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11,
      101.2, 101.57, 101.84, 102.36, 102.72,
    ];
    expect(mean(readings)).toBeCloseTo(100.145, 2);
    expect(standardDeviation(readings)).toBeCloseTo(1.489, 2);
  });

  it("Hyndman & Fan (1996), definition 7: neighbours are (k - 1) / (n - 1) apart, a straight line between", () => {
    const sorted = [1, 3, 3, 7, 11];
    expect([0, 0.25, 0.5, 0.75, 1].map((share) => quantileOfSorted(sorted, share))).toEqual(sorted);
    expect(quantileOfSorted(sorted, 0.625)).toBe(5);
    expect(quantileOfSorted([4], 0.3)).toBe(4);
  });
});
