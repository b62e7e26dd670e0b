import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { differenceSlopes, type Residuals, solveByBroyden } from "../../shared/numerics/broyden";

const options = {
  isFound: (residuals: Readonly<Float64Array>) => residuals.every((each) => Math.abs(each) < 1e-10),
  largestStep: 10,
  mostSteps: 60,
};

function solve(residualsAt: Residuals, start: readonly number[], more = options): Float64Array | null {
  const at = Float64Array.from(start);
  const residuals = residualsAt(at);
  if (residuals === null) return null;
  const slopes = differenceSlopes(residualsAt, at, residuals, 1e-6);
  return slopes === null ? null : solveByBroyden(residualsAt, at, residuals, slopes, more);
}

describe("solveByBroyden(residualsAt, start, residuals, slopes, options)", () => {
  it("finds the corners of closed-form systems: circle and line, exponential pair, Rosenbrock's valley", () => {
    const circle = solve(([x, y]) => Float64Array.of(x * x + y * y - 25, 3 * x - 4 * y), [5, 2]);
    expect(circle?.[0]).toBeCloseTo(4, 9);
    expect(circle?.[1]).toBeCloseTo(3, 9);
    const pair = solve(([x, y]) => Float64Array.of(Math.exp(x) - 2 * y, x + y - Math.LN2 - 1), [0.5, 1.2]);
    expect(pair?.[0]).toBeCloseTo(Math.LN2, 9);
    expect(pair?.[1]).toBeCloseTo(1, 9);
    const valley = solve(([x, y]) => Float64Array.of(10 * (y - x * x), 1 - x), [-1.2, 1]);
    expect(valley?.[0]).toBeCloseTo(1, 9);
    expect(valley?.[1]).toBeCloseTo(1, 9);
  });

  it("needs one step for linear equations of any size, which it solves like the library", () => {
    const number = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }).chain((size) =>
          fc.record({
            matrix: fc.array(number, { minLength: size * size, maxLength: size * size }),
            root: fc.array(number, { minLength: size, maxLength: size }),
          }),
        ),
        ({ matrix, root }) => {
          const size = root.length;
          // Diagonally dominant, so that it has an inverse.
          const row = (i: number, x: ArrayLike<number>) =>
            root.reduce((sum, _, j) => sum + (matrix[i * size + j] + (i === j ? 2 * size : 0)) * (x[j] - root[j]), 0);
          let asked = 0;
          const found = solve((x) => {
            asked++;
            return Float64Array.from(root, (_, i) => row(i, x));
          }, new Array(size).fill(0.3));
          root.forEach((each, i) => {
            expect(found?.[i]).toBeCloseTo(each, 8);
          });
          // The start, a difference for each unknown, one step and one that mends the differences' rounding.
          expect(asked).toBeLessThanOrEqual(size + 3);
        },
      ),
    );
  });

  it("asks once for each step", () => {
    let asked = 0;
    solve(
      ([x, y]) => {
        asked++;
        return Float64Array.of(Math.cos(x) - y, Math.sin(y) - x);
      },
      [0.7, 0.7],
    );
    // The published convergence is superlinear: far fewer than the 3 that a fresh matrix would take each step.
    expect(asked).toBeLessThanOrEqual(11);
  });

  it("gives up where a step is too long, the matrix is singular, residuals end or steps run out", () => {
    const far: Residuals = ([x]) => Float64Array.of(x - 100);
    expect(solve(far, [0])).toBeNull();
    expect(solve(far, [95])?.[0]).toBeCloseTo(100, 9);
    expect(solve(([x, y]) => Float64Array.of(x + y, x + y - 1), [0, 0])).toBeNull();
    expect(solve(([x]) => (x > 0.5 ? null : Float64Array.of(x - 1)), [0])).toBeNull();
    expect(solve(([x]) => Float64Array.of(Math.exp(x) - 2), [3], { ...options, mostSteps: 2 })).toBeNull();
  });

  it("returns the start where it is good enough, and refuses lengths that do not fit", () => {
    const never: Residuals = () => {
      throw new Error("asked");
    };
    const found = solveByBroyden(never, Float64Array.of(3), Float64Array.of(0), Float64Array.of(1), options);
    expect(found).toEqual(Float64Array.of(3));
    expect(() => solveByBroyden(never, Float64Array.of(3), Float64Array.of(0, 0), Float64Array.of(1), options)).toThrow(
      "1 unknowns have 2 residuals and 1 slopes; they need 1 and 1.",
    );
  });
});
