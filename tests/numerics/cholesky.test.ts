import fc from "fast-check";
import { CholeskyDecomposition, Matrix } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { choleskyOf, solveLowerInPlace, solveUpperInPlace } from "../../shared/numerics/cholesky";

/** B B^T + I, positive definite whatever B is. */
const definite = fc
  .integer({ min: 1, max: 8 })
  .chain((n) => fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: n * n, maxLength: n * n }))
  .map((entries) => {
    const n = Math.sqrt(entries.length);
    const b = new Matrix(Array.from({ length: n }, (_, i) => entries.slice(i * n, (i + 1) * n)));
    return b.mmul(b.transpose()).add(Matrix.eye(n));
  });

describe("choleskyOf(matrix, size)", () => {
  it("is the factor of the library ml-matrix, 1e-10", () => {
    fc.assert(
      fc.property(definite, (matrix) => {
        const size = matrix.rows;
        const found = choleskyOf(Float64Array.from(matrix.to1DArray()), size);
        const expected = new CholeskyDecomposition(matrix).lowerTriangularMatrix.to1DArray();
        expected.forEach((value, i) => {
          expect(Math.abs(found[i] - value)).toBeLessThan(1e-10 * size * (1 + Math.abs(value)));
        });
      }),
    );
  });

  it("solves A x = b by its two triangles: A times x is b, 1e-9", () => {
    fc.assert(
      fc.property(definite, (matrix) => {
        const size = matrix.rows;
        const factor = choleskyOf(Float64Array.from(matrix.to1DArray()), size);
        const b = Float64Array.from({ length: size }, (_, i) => i - 1.5);
        const x = b.slice();
        solveLowerInPlace(factor, x);
        solveUpperInPlace(factor, x);
        const back = matrix.mmul(Matrix.columnVector(Array.from(x))).to1DArray();
        back.forEach((value, i) => {
          expect(Math.abs(value - b[i])).toBeLessThan(1e-9);
        });
      }),
    );
  });

  it("says which row spoils a matrix that is not positive definite", () => {
    expect(() => choleskyOf(Float64Array.of(1, 2, 2, 1), 2)).toThrow("not positive definite: -3 is left of row 1");
  });
});
