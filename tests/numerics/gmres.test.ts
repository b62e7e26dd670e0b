import fc from "fast-check";
import { Matrix, solve } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { solveByGmres } from "../../shared/numerics/gmres";
import { factorInPlace, solveFactored } from "../../shared/numerics/lu";
import { relativeDifference, rowsOf, wellConditionedSystem } from "./randomSystem";

/** Identity plus a smooth kernel: a second-kind equation, whose iteration count does not grow with the number of nodes. */
function secondKindMatrix(size: number): Float64Array {
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++)
      matrix[i * size + j] = Math.exp(-Math.abs(Math.sin((Math.PI * (i - j)) / size))) / size;
    matrix[i * size + i] += 1;
  }
  return matrix;
}

describe("solveByGmres", () => {
  it("solves random well-conditioned systems like a library, to 1e-9", () => {
    fc.assert(
      fc.property(wellConditionedSystem(), ({ size, matrix, rightSide }) => {
        const library = solve(new Matrix(rowsOf(matrix, size)), Matrix.columnVector(Array.from(rightSide)));
        const solved = solveByGmres(matrix, rightSide);
        if (!solved.ok) throw new Error(solved.problem.message);
        expect(relativeDifference(solved.value, library.to1DArray())).toBeLessThan(1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it("agrees with LU on a second-kind equation of 300 unknowns to 1e-11", () => {
    const size = 300;
    const matrix = secondKindMatrix(size);
    const rightSide = Float64Array.from({ length: size }, (_, i) => Math.cos(i) + i / size);
    const solved = solveByGmres(matrix, rightSide);
    if (!solved.ok) throw new Error(solved.problem.message);
    const direct = solveFactored(factorInPlace(Float64Array.from(matrix), size), rightSide);
    expect(relativeDifference(solved.value, direct)).toBeLessThan(1e-11);
  });

  it("needs no more steps for 400 unknowns than for 100 on a second-kind equation", () => {
    for (const size of [100, 400]) {
      const rightSide = Float64Array.from({ length: size }, (_, i) => Math.sin((2 * Math.PI * i) / size) + 0.3);
      expect(solveByGmres(secondKindMatrix(size), rightSide, { maximumSteps: 12 }).ok).toBe(true);
    }
  });

  it("returns the start when it already solves the system, and zero for a zero right side", () => {
    const matrix = Float64Array.of(2, 1, 0, 3);
    const exact = solveByGmres(matrix, Float64Array.of(4, 6), { start: Float64Array.of(1, 2), maximumSteps: 0 });
    expect(exact).toEqual({ ok: true, value: Float64Array.of(1, 2) });
    expect(solveByGmres(matrix, new Float64Array(2))).toEqual({ ok: true, value: new Float64Array(2) });
  });

  it("starts from a guess and does not change it", () => {
    const start = Float64Array.of(5, -3);
    const solved = solveByGmres(Float64Array.of(2, 1, 0, 3), Float64Array.of(4, 6), { start });
    if (!solved.ok) throw new Error(solved.problem.message);
    expect(relativeDifference(solved.value, [1, 2])).toBeLessThan(1e-12);
    expect(Array.from(start)).toEqual([5, -3]);
  });

  it("reports when the steps run out, with the residual reached and the one asked for", () => {
    // A cyclic shift: no Krylov space smaller than the whole holds the answer.
    const size = 10;
    const matrix = new Float64Array(size * size);
    for (let i = 0; i < size; i++) matrix[i * size + ((i + 1) % size)] = 1;
    const rightSide = new Float64Array(size);
    rightSide[0] = 1;
    const stopped = solveByGmres(matrix, rightSide, { maximumSteps: 5 });
    expect(stopped.ok).toBe(false);
    if (stopped.ok) return;
    expect(stopped.problem.code).toBe("no-convergence");
    expect(stopped.problem.message).toMatch(/after 5 steps with a relative residual of 1\.0e\+0; 1e-12 was asked for/);
    expect(solveByGmres(matrix, rightSide).ok).toBe(true);
  });

  it("reports a singular matrix instead of returning an answer", () => {
    for (const [matrix, rightSide] of [
      [Float64Array.of(1, 1, 1, 1), Float64Array.of(1, 0)],
      [new Float64Array(4), Float64Array.of(1, 0)],
      [Float64Array.of(1, 2, 3, 4, 5, 6, 7, 8, 9), Float64Array.of(1, 0, 0)],
    ]) {
      const solved = solveByGmres(matrix, rightSide);
      expect(solved.ok).toBe(false);
      if (!solved.ok) expect(solved.problem.code).toBe("singular");
    }
  });

  it("refuses a matrix that is not square on the right side, giving both numbers", () => {
    expect(() => solveByGmres(new Float64Array(6), new Float64Array(2))).toThrow(
      new RangeError("matrix has 6 values; 2 rows need 4."),
    );
  });
});
