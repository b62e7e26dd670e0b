import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { toleranceFactor } from "../../shared/jobs/puck/rules/toleranceFactor";
import { type FigureOfInputs, stackTolerances } from "../../shared/jobs/puck/rules/toleranceStack";
import { type Result, success } from "../../shared/result";
import { unwrap } from "../puck/examplePuck";

function factorOf(
  nominal: readonly number[],
  plusMinus: readonly number[],
  figure: FigureOfInputs,
  from: number | null,
  to: number | null,
) {
  const stack = unwrap(stackTolerances(nominal, plusMinus, figure));
  return toleranceFactor(nominal, plusMinus, figure, stack, { from, to });
}

describe("toleranceFactor(nominal, plusMinus, figure, stack, range)", () => {
  it("of a sum is the room over the summed tolerances, exactly to 1e-9", () => {
    const sum = ([a, b]: readonly number[]) => success(a + b);
    expect(factorOf([1, 2], [0.3, 0.1], sum, 2.9, 10)).toBeCloseTo(0.25, 9);
    expect(factorOf([1, 2], [0.3, 0.1], sum, null, 3.1)).toBeCloseTo(0.25, 9);
    expect(factorOf([1, 2], [0.3, 0.1], sum, 2.8, 3.1)).toBeCloseTo(0.25, 9);
  });

  it("of a figure drawn at the end of its range is 0", () => {
    expect(factorOf([1], [0.1], ([x]) => success(x), 1, null)).toBe(0);
  });

  it("sees the extremes of a figure that is not monotone", () => {
    // (x - 1)^2 over 1 +- f reaches f^2.
    expect(factorOf([1], [1], ([x]) => success((x - 1) ** 2), null, 0.25)).toBeCloseTo(0.5, 8);
  });

  it("counts what cannot be made as outside", () => {
    const figure = ([x]: readonly number[]): Result<number> =>
      x > 1.3 ? { ok: false, problem: { code: "shape", message: "cannot be made" } } : success(x);
    const stack = { ...unwrap(stackTolerances([1], [0.2], figure)), highestCorner: [1], lowestCorner: [-1] };
    const factor = toleranceFactor([1], [0.6], figure, stack, { from: 0, to: 10 });
    expect(factor).toBeCloseTo(0.5, 8);
  });

  it("keeps the figure inside, and a little more does not, for any monotone figure", () => {
    const size = fc.double({ min: 0.1, max: 1, noNaN: true });
    fc.assert(
      fc.property(size, size, size, (a, b, share) => {
        const figure = ([x, y]: readonly number[]) => success(x ** 3 * Math.exp(-y));
        const { highest, nominal } = unwrap(stackTolerances([2, 1], [a, b], figure));
        const to = nominal + (0.05 + 0.9 * share) * (highest - nominal);
        const factor = factorOf([2, 1], [a, b], figure, null, to);
        const at = (f: number) => unwrap(stackTolerances([2, 1], [f * a, f * b], figure)).highest;
        expect(at(factor)).toBeLessThanOrEqual(to);
        expect(at(Math.min(1, factor + 1e-6))).toBeGreaterThan(to);
      }),
    );
  });

  it("looks at few pucks: below 40 for one figure of four dimensions", () => {
    let asked = 0;
    const figure = (inputs: readonly number[]) => {
      asked++;
      return success(inputs.reduce((product, x) => product * x, 1));
    };
    const tolerances = [0.1, 0.1, 0.1, 0.1];
    const stack = unwrap(stackTolerances([1, 1, 1, 1], tolerances, figure));
    asked = 0;
    expect(toleranceFactor([1, 1, 1, 1], tolerances, figure, stack, { from: null, to: 1.2 })).toBeCloseTo(
      (1.2 ** 0.25 - 1) / 0.1,
      8,
    );
    expect(asked).toBeLessThan(40);
  });
});
