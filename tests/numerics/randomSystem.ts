import fc from "fast-check";

/** A dense system in row-major form. */
export interface RandomSystem {
  readonly size: number;
  readonly matrix: Float64Array;
  readonly rightSide: Float64Array;
}

/** Numbers in [-1, 1) from a seed: a linear congruential generator (Park & Miller 1988, Comm. ACM 31, 1192). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return (2 * state) / 2147483647 - 1;
  };
}

/**
 * Random systems of 1 to 40 unknowns whose rows are diagonally dominant by half, so that |A^-1| is at most 2 in the
 * maximum norm, with the rows then cycled by a random number of places: a solver without row exchange meets small pivots.
 */
export function wellConditionedSystem(): fc.Arbitrary<RandomSystem> {
  return fc
    .record({
      size: fc.integer({ min: 1, max: 40 }),
      seed: fc.integer({ min: 1, max: 2147483646 }),
      cycle: fc.nat(39),
      scale: fc.constantFrom(1, 1e9, 1e-9),
    })
    .map(({ size, seed, cycle, scale }) => {
      const next = numbers(seed);
      const matrix = new Float64Array(size * size);
      for (let i = 0; i < size; i++) {
        const row = ((i + cycle) % size) * size;
        let others = 0;
        for (let j = 0; j < size; j++) {
          const value = j === i ? 0 : next() / size;
          matrix[row + j] = scale * value;
          others += Math.abs(value);
        }
        matrix[row + i] = scale * (others + 0.5 + Math.abs(next()));
      }
      return { size, matrix, rightSide: Float64Array.from({ length: size }, next) };
    });
}

/** Rows of a row-major matrix, for a library that takes nested arrays. */
export function rowsOf(matrix: Readonly<Float64Array>, size: number): number[][] {
  return Array.from({ length: size }, (_, i) => Array.from(matrix.subarray(i * size, (i + 1) * size)));
}

/** Largest difference of two vectors over the largest magnitude of the second; 0 when both are zero. */
export function relativeDifference(actual: ArrayLike<number>, expected: ArrayLike<number>): number {
  let difference = 0;
  let scale = 0;
  for (let i = 0; i < expected.length; i++) {
    difference = Math.max(difference, Math.abs(actual[i] - expected[i]));
    scale = Math.max(scale, Math.abs(expected[i]));
  }
  return difference === 0 ? 0 : difference / scale;
}
