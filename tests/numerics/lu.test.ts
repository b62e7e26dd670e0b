import fc from "fast-check";
import { LuDecomposition, Matrix, solve } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { factorInPlace, solveFactored } from "../../shared/numerics/lu";
import { relativeDifference, rowsOf, wellConditionedSystem } from "./randomSystem";

describe("factorInPlace and solveFactored", () => {
  it("solve random well-conditioned systems like a library, to 1e-11", () => {
    fc.assert(
      fc.property(wellConditionedSystem(), ({ size, matrix, rightSide }) => {
        const library = solve(new Matrix(rowsOf(matrix, size)), Matrix.columnVector(Array.from(rightSide)));
        const x = solveFactored(factorInPlace(Float64Array.from(matrix), size), rightSide);
        expect(relativeDifference(x, library.to1DArray())).toBeLessThan(1e-11);
      }),
      { numRuns: 60 },
    );
  });

  it("give the factors of a library: L U equals the rows of A in pivot order", () => {
    fc.assert(
      fc.property(wellConditionedSystem(), ({ size, matrix }) => {
        const { factors, rowOrder } = factorInPlace(Float64Array.from(matrix), size);
        const upper = new LuDecomposition(new Matrix(rowsOf(matrix, size))).upperTriangularMatrix;
        const scale = Math.max(...matrix.map(Math.abs));
        for (let i = 0; i < size; i++) {
          for (let j = 0; j < size; j++) {
            let product = 0;
            for (let k = 0; k <= Math.min(i, j); k++) {
              product += (k === i ? 1 : factors[i * size + k]) * factors[k * size + j];
            }
            expect(Math.abs(product - matrix[rowOrder[i] * size + j])).toBeLessThan(1e-14 * scale);
            if (j >= i) expect(Math.abs(factors[i * size + j] - upper.get(i, j))).toBeLessThan(1e-13 * scale);
          }
        }
      }),
      { numRuns: 20 },
    );
  });

  it("answer any number of right sides from one factorization", () => {
    const lu = factorInPlace(Float64Array.of(0, 2, 3, 4), 2);
    expect(Array.from(solveFactored(lu, Float64Array.of(2, 4)))).toEqual([0, 1]);
    expect(Array.from(solveFactored(lu, Float64Array.of(4, 11)))).toEqual([1, 2]);
  });

  it("exchange rows: a zero on the diagonal is no obstacle, and a tiny pivot costs no digits", () => {
    // The textbook case: without exchange, 1e-20 as pivot gives x = (0, 1) instead of (1, 1).
    const x = solveFactored(factorInPlace(Float64Array.of(1e-20, 1, 1, 1), 2), Float64Array.of(1, 2));
    expect(x[0]).toBeCloseTo(1, 14);
    expect(x[1]).toBeCloseTo(1, 14);
  });

  it("refuse a singular matrix, naming the column without pivot and the size", () => {
    expect(() => factorInPlace(Float64Array.of(1, 2, 2, 4), 2)).toThrow(
      new RangeError("column 1 of the 2 x 2 matrix has no usable pivot."),
    );
    expect(() => factorInPlace(new Float64Array(9), 3)).toThrow("column 0 of the 3 x 3 matrix");
  });

  it("refuse a matrix with NaN instead of returning one", () => {
    expect(() => factorInPlace(Float64Array.of(Number.NaN, 1, 1, 1), 2)).toThrow(RangeError);
  });

  it("refuse wrong lengths, giving both numbers", () => {
    expect(() => factorInPlace(new Float64Array(5), 2)).toThrow(new RangeError("matrix has 5 values; size 2 needs 4."));
    const lu = factorInPlace(Float64Array.of(1, 0, 0, 1), 2);
    expect(() => solveFactored(lu, new Float64Array(3))).toThrow(
      new RangeError("right side has 3 values; the matrix has 2 rows."),
    );
  });
});
