import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { madeShare } from "../../shared/jobs/puck/rules/madeShare";
import { stackTolerances } from "../../shared/jobs/puck/rules/toleranceStack";
import { success } from "../../shared/result";
import { unwrap } from "../puck/examplePuck";

describe("stackTolerances(nominal, plusMinus, figure)", () => {
  it("a sum of lengths stacks to the sum of the tolerances, exactly and linearly alike", () => {
    const stack = unwrap(stackTolerances([10, 20, 30], [0.1, 0.2, 0.05], (x) => success(x[0] + x[1] - x[2])));
    expect(stack.lowest).toBeCloseTo(-0.35, 12);
    expect(stack.highest).toBeCloseTo(0.35, 12);
    expect(stack.linearPlusMinus).toBeCloseTo(0.35, 12);
    expect(stack.slopes.map((slope) => Math.round(slope))).toEqual([1, 1, -1]);
  });

  it("a cylinder's volume has its extremes at the corners: all small and all large", () => {
    const volume = ([R, h]: readonly number[]) => success(Math.PI * R * R * h);
    const stack = unwrap(stackTolerances([0.04, 0.03], [0.001, 0.0005], volume));
    expect(stack.lowest).toBeCloseTo(Math.PI * 0.039 ** 2 * 0.0295, 15);
    expect(stack.highest).toBeCloseTo(Math.PI * 0.041 ** 2 * 0.0305, 15);
    expect(stack.isMonotone).toBe(true);
  });

  it("says when a figure is not monotone over its tolerance", () => {
    expect(unwrap(stackTolerances([0], [1], ([x]) => success(x * x))).isMonotone).toBe(false);
  });

  it("holds every point of the box of a figure monotone in each input", () => {
    const share = fc.double({ min: -1, max: 1, noNaN: true });
    const figure = ([a, b, c]: readonly number[]) => success((a ** 3 * Math.exp(b)) / c);
    const stack = unwrap(stackTolerances([2, 1, 3], [0.3, 0.2, 0.4], figure));
    fc.assert(
      fc.property(share, share, share, (u, v, w) => {
        const value = unwrap(figure([2 + 0.3 * u, 1 + 0.2 * v, 3 + 0.4 * w]));
        expect(value).toBeGreaterThanOrEqual(stack.lowest - 1e-12);
        expect(value).toBeLessThanOrEqual(stack.highest + 1e-12);
      }),
    );
  });

  it("refuses a negative tolerance", () => {
    expect(stackTolerances([1], [-0.1], ([x]) => success(x)).ok).toBe(false);
  });
});

describe("madeShare(nominal, plusMinus, accepts, sizes, samples, seed)", () => {
  it("uniform sizes: half of them are on either side, three quarters within the inner three quarters", () => {
    const made = unwrap(madeShare([0], [1], ([x]) => Math.abs(x) < 0.75, "uniform", 20_000, 1));
    expect(made.shareLow).toBeLessThan(0.75);
    expect(made.shareHigh).toBeGreaterThan(0.75);
    expect(made.shareHigh - made.shareLow).toBeLessThan(0.013);
  });

  it("normal sizes: 68.27 / 99.73 % are within a third of the tolerance (one standard deviation, cut at three)", () => {
    const made = unwrap(madeShare([5], [3], ([x]) => Math.abs(x - 5) < 1, "normal", 20_000, 2));
    const expected = 0.6826895 / 0.9973002;
    expect(made.shareLow).toBeLessThan(expected);
    expect(made.shareHigh).toBeGreaterThan(expected);
  });

  it("Wilson (1927): 0 of 10 accepted leaves the share below 0.2775", () => {
    const made = unwrap(madeShare([0], [1], () => false, "uniform", 10, 3));
    expect(made.shareLow).toBe(0);
    expect(made.shareHigh).toBeCloseTo(0.2775, 4);
  });

  it("refuses 0 samples and a broken seed", () => {
    expect(madeShare([0], [1], () => true, "uniform", 0, 1).ok).toBe(false);
    expect(madeShare([0], [1], () => true, "uniform", 10, 1.5).ok).toBe(false);
  });
});
