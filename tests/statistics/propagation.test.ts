import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Result } from "../../shared/result";
import { propagateFirstOrder } from "../../shared/statistics/firstOrder";
import { firstOrderIsValidated, numericalTolerance, propagateDistributions } from "../../shared/statistics/monteCarlo";
import { coverageFactor } from "../../shared/statistics/studentT";
import { exactInput, type InputDistribution, type UncertainInput } from "../../shared/statistics/uncertainInput";
import { statedUncertainty } from "../../shared/statistics/uncertaintyStatement";

function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}

function input(
  key: string,
  best: number,
  standardUncertainty: number,
  degreesOfFreedom = Number.POSITIVE_INFINITY,
  distribution: InputDistribution = "normal",
): UncertainInput {
  return { ...exactInput(key, key, best), standardUncertainty, degreesOfFreedom, distribution };
}

describe("statedUncertainty(statement)", () => {
  it("JCGM 100:2008, 4.3.7: half a width of 40 K, rectangular, is 23.09 K, exact", () => {
    expect(statedUncertainty({ plusMinus: 40, kind: "rectangular" }).standardUncertainty).toBeCloseTo(23.094, 3);
  });

  it("JCGM 100:2008, 4.3.9: triangular has half the variance of rectangular, exact", () => {
    const [triangular, rectangular] = (["triangular", "rectangular"] as const).map(
      (kind) => statedUncertainty({ plusMinus: 1, kind }).standardUncertainty,
    );
    expect(triangular ** 2 / rectangular ** 2).toBeCloseTo(0.5, 12);
  });
});

describe("propagateFirstOrder(model, inputs)", () => {
  it("JCGM 100:2008, H.1: an end gauge of 50.000838 mm has u_c 32 nm, 16 degrees of freedom and U99 93 nm", () => {
    // nm, K and 1/K. Two products of deviations from 0 are of second order and left out by the law of propagation.
    const standard = 50_000_623;
    const inputs = [
      input("standard", standard, 25, 18),
      input("difference", 215, 9.7, 25.6),
      input("expansion", 11.5e-6, 1.2e-6),
      input("temperature", -0.1, 0.41),
      input("expansionDifference", 0, 0.58e-6, 50),
      input("temperatureDifference", 0, 0.029, 2),
    ];
    const gauge = (x: Readonly<Float64Array>) => x[0] + x[1] - x[0] * (x[4] * x[3] + x[2] * x[5]);
    // H.1.3.4 takes the sensitivity of the difference in expansion at the mean deviation of -0.1 K.
    const found = value(propagateFirstOrder(gauge, inputs, [], 0.99));
    expect(found.value).toBe(50_000_838);
    expect(found.combinedStandardUncertainty).toBeCloseTo(31.71, 1);
    expect(found.effectiveDegreesOfFreedom).toBe(16);
    expect(Math.round(found.expandedUncertainty)).toBe(93);
    expect(Math.abs(found.parts[4].contribution)).toBeCloseTo(2.9, 1);
    expect(Math.abs(found.parts[5].contribution)).toBeCloseTo(16.7, 1);
  });

  it("JCGM 100:2008, H.2: R 127.732(71), X 219.847(295), Z 254.260(236) ohm with correlated inputs", () => {
    // Table H.2: V, I in mA, phase, five sets; from memory, and the means and correlations below are the printed ones.
    const sets = [
      [5.007, 19.663, 1.0456],
      [4.994, 19.639, 1.0438],
      [5.005, 19.64, 1.0468],
      [4.99, 19.685, 1.0428],
      [4.999, 19.678, 1.0433],
    ];
    const n = sets.length;
    const means = [0, 1, 2].map((j) => sets.reduce((sum, set) => sum + set[j], 0) / n);
    const covariance = (j: number, k: number) =>
      sets.reduce((sum, set) => sum + (set[j] - means[j]) * (set[k] - means[k]), 0) / (n * (n - 1));
    const u = [0, 1, 2].map((j) => Math.sqrt(covariance(j, j)));
    const keys = ["V", "I", "phi"];
    const r = (j: number, k: number) => covariance(j, k) / (u[j] * u[k]);
    expect(r(0, 1)).toBeCloseTo(-0.36, 2);
    expect(r(0, 2)).toBeCloseTo(0.86, 2);
    expect(r(1, 2)).toBeCloseTo(-0.65, 2);
    const inputs = keys.map((key, j) => input(key, means[j], u[j], 4));
    const pairs = [[0, 1] as const, [0, 2] as const, [1, 2] as const];
    const correlations = pairs.map(([j, k]) => ({ between: [keys[j], keys[k]] as const, coefficient: r(j, k) }));
    const ohms: readonly (readonly [(x: Readonly<Float64Array>) => number, number, number])[] = [
      [(x) => (1000 * x[0] * Math.cos(x[2])) / x[1], 127.732, 0.071],
      [(x) => (1000 * x[0] * Math.sin(x[2])) / x[1], 219.847, 0.295],
      [(x) => (1000 * x[0]) / x[1], 254.26, 0.236],
    ];
    for (const [model, best, uncertainty] of ohms) {
      const found = value(propagateFirstOrder(model, inputs, correlations));
      expect(found.value).toBeCloseTo(best, 3);
      expect(Math.abs(found.combinedStandardUncertainty - uncertainty)).toBeLessThan(6e-4);
    }
  });

  it("Welch & Satterthwaite as in JCGM 100:2008, H.1.6: parts of 25, 9.7, 2.9 and 16.6 nm have 16.7, cut to 16", () => {
    const inputs = [input("a", 0, 25, 18), input("b", 0, 9.7, 25.6), input("c", 0, 2.9, 50), input("d", 0, 16.6, 2)];
    const found = value(propagateFirstOrder((x) => x[0] + x[1] + x[2] + x[3], inputs));
    expect(found.effectiveDegreesOfFreedom).toBe(16);
  });

  it("gives shares that add up to 1 with the correlation's, for any linear model", () => {
    const part = fc.record({
      c: fc.double({ min: -5, max: 5, noNaN: true }),
      u: fc.double({ min: 1e-3, max: 5, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(part, { minLength: 2, maxLength: 6 }),
        fc.double({ min: -0.9, max: 0.9, noNaN: true }),
        (parts, r) => {
          const inputs = parts.map(({ u }, i) => input(`x${i}`, i, u));
          const model = (x: Readonly<Float64Array>) => parts.reduce((sum, { c }, i) => sum + c * x[i], 0);
          const found = value(propagateFirstOrder(model, inputs, [{ between: ["x0", "x1"], coefficient: r }]));
          const sum = found.parts.reduce((total, { share }) => total + share, found.correlationShare);
          if (found.combinedStandardUncertainty > 1e-9) expect(sum).toBeCloseTo(1, 6);
        },
      ),
    );
  });

  it("names a correlation of unknown inputs, and an impossible coefficient", () => {
    const inputs = [input("a", 1, 1), input("b", 1, 1)];
    const sum = (x: Readonly<Float64Array>) => x[0] + x[1];
    const unknown = propagateFirstOrder(sum, inputs, [{ between: ["a", "c"], coefficient: 0 }]);
    expect(unknown.ok ? "" : unknown.problem.message).toContain('between "a" and "c"');
    const beyond = propagateFirstOrder(sum, inputs, [{ between: ["a", "b"], coefficient: 1.5 }]);
    expect(beyond.ok ? "" : beyond.problem.message).toContain("1.5; it must be from -1 to 1");
  });
});

describe("propagateDistributions(model, inputs)", () => {
  const sum = (x: Readonly<Float64Array>) => x[0] + x[1] + x[2] + x[3];
  const four = (distribution: InputDistribution, last = 1) =>
    [1, 1, 1, last].map((u, i) => input(`x${i}`, 0, u, Number.POSITIVE_INFINITY, distribution));
  const run = (inputs: readonly UncertainInput[]) => value(propagateDistributions(sum, inputs, [], 200_000, 7));

  it("JCGM 101:2008, 9.2.2: four normal inputs give u 2.0 and the interval -3.9 to 3.9, and confirm the first order", () => {
    const found = run(four("normal"));
    expect(found.standardUncertainty).toBeCloseTo(2, 1);
    expect(Math.abs(found.low + 3.92)).toBeLessThan(0.05);
    expect(Math.abs(found.high - 3.92)).toBeLessThan(0.05);
    expect(firstOrderIsValidated(value(propagateFirstOrder(sum, four("normal"))), found)).toBe(true);
  });

  it("JCGM 101:2008, 9.2.3: four rectangular inputs give -3.88 to 3.88, where the first order says 3.92", () => {
    const found = run(four("rectangular"));
    expect(Math.abs(found.low + 3.88)).toBeLessThan(0.03);
    expect(Math.abs(found.high - 3.88)).toBeLessThan(0.03);
    expect(value(propagateFirstOrder(sum, four("rectangular"))).expandedUncertainty).toBeCloseTo(3.92, 2);
  });

  it("JCGM 101:2008, 9.2.4: one rectangular input of ten times the others gives -17.0 to 17.0; the first order's 19.9 is not confirmed", () => {
    const found = run(four("rectangular", 10));
    expect(Math.abs((found.standardUncertainty ?? 0) - Math.sqrt(103))).toBeLessThan(0.05);
    expect(Math.abs(found.low + 17)).toBeLessThan(0.1);
    expect(Math.abs(found.shortestHigh - found.shortestLow - 34)).toBeLessThan(0.2);
    const firstOrder = value(propagateFirstOrder(sum, four("rectangular", 10)));
    expect(firstOrder.expandedUncertainty).toBeCloseTo(19.9, 1);
    expect(firstOrderIsValidated(firstOrder, found, 2)).toBe(false);
  });

  it("JCGM 101:2008, 6.4.9.4: with 2 degrees of freedom or fewer there is no standard uncertainty, with 3 there is", () => {
    const scatter = (degreesOfFreedom: number) => [
      { ...input("scatter", 1, 0.1), distribution: "studentT" as const, degreesOfFreedom },
    ];
    const own = (x: Readonly<Float64Array>) => x[0];
    const two = value(propagateDistributions(own, scatter(2), [], 2000, 3));
    expect(two.standardUncertainty).toBeNull();
    expect(two.high).toBeGreaterThan(two.low);
    expect(firstOrderIsValidated(value(propagateFirstOrder(own, scatter(2))), two)).toBe(false);
    expect(value(propagateDistributions(own, scatter(3), [], 2000, 3)).standardUncertainty).toBeGreaterThan(0.1);
  });

  it("JCGM 100:2008, table G.2: a 95 % half-width with 5 degrees of freedom is 2.57 standard uncertainties, with endless ones 1.96", () => {
    const stated = (degreesOfFreedom?: number) =>
      statedUncertainty({ plusMinus: 1, kind: "normal95", ...(degreesOfFreedom ? { degreesOfFreedom } : {}) });
    expect(1 / stated(5).standardUncertainty).toBeCloseTo(2.57, 2);
    expect(stated(5).distribution).toBe("studentT");
    expect(1 / stated().standardUncertainty).toBeCloseTo(1.96, 2);
    expect(stated().distribution).toBe("normal");
  });

  it("JCGM 101:2008, 7.9.2, example 1: u 0.00035 g to one and two digits has the tolerances 0.00005 and 0.000005", () => {
    expect(numericalTolerance(0.00035, 2)).toBeCloseTo(0.000005, 9);
    expect(numericalTolerance(0.00032, 1)).toBeCloseTo(0.00005, 9);
  });

  it("draws correlated inputs together: the difference of two with coefficient 0.9 has the variance of the law, 3 %", () => {
    const inputs = [input("a", 5, 1), input("b", 3, 1)];
    const correlations = [{ between: ["a", "b"] as const, coefficient: 0.9 }];
    const difference = (x: Readonly<Float64Array>) => x[0] - x[1];
    const law = value(propagateFirstOrder(difference, inputs, correlations));
    const found = value(propagateDistributions(difference, inputs, correlations, 50_000, 3));
    expect(law.combinedStandardUncertainty).toBeCloseTo(Math.sqrt(0.2), 10);
    expect((found.standardUncertainty ?? 0) / law.combinedStandardUncertainty).toBeCloseTo(1, 1);
    expect(law.correlationShare).toBeCloseTo(-9, 6);
  });

  it("gives the quantiles of Student's t for a mean of few readings (JCGM 101:2008, 6.4.9), 3 %", () => {
    const found = value(propagateDistributions((x) => x[0], [input("mean", 0, 1, 4, "studentT")], [], 200_000, 11));
    expect(found.high / coverageFactor(0.95, 4)).toBeCloseTo(1, 1);
  });

  it("is the same for equal seeds, and refuses correlations that contradict each other", () => {
    const inputs = ["a", "b", "c"].map((key) => input(key, 0, 1));
    const pair = (a: string, b: string, coefficient: number) => ({ between: [a, b] as const, coefficient });
    const once = value(propagateDistributions((x) => x[0], inputs, [], 1000, 5));
    expect(value(propagateDistributions((x) => x[0], inputs, [], 1000, 5))).toEqual(once);
    const impossible = [pair("a", "b", 0.95), pair("b", "c", 0.95), pair("a", "c", -0.95)];
    const refused = propagateDistributions((x) => x[0], inputs, impossible, 1000, 5);
    expect(refused.ok ? "" : refused.problem.message).toContain("contradict each other");
  });
});
