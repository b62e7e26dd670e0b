import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { randomDraws, resumedDraws } from "../../shared/statistics/randomDraws";
import { mean, squaresAbout } from "../../shared/statistics/sample";
import { shuffledOrder, shuffleInPlace } from "../../shared/statistics/shuffle";
import { chiSquareTail } from "../../shared/statistics/tailProbability";

const count = 50_000;

function sampleOf(draw: () => number): Float64Array {
  return Float64Array.from({ length: count }, draw);
}

/** Source: Smirnov (1948), Ann. Math. Stat. 19, 279: a distance of 1.95 / sqrt(n) has a chance of 0.1 %. */
function distanceTo(sample: Float64Array, distribution: (x: number) => number): number {
  const sorted = Float64Array.from(sample).sort();
  let farthest = 0;
  sorted.forEach((x, i) => {
    const expected = distribution(x);
    farthest = Math.max(farthest, expected - i / count, (i + 1) / count - expected);
  });
  return farthest * Math.sqrt(count);
}

describe("randomDraws(seed)", () => {
  it("uniform, normal and Student's t of 3 degrees of freedom follow their distributions (Kolmogorov & Smirnov, 0.1 %)", () => {
    const draws = randomDraws(20261125);
    expect(distanceTo(sampleOf(draws.uniform), (x) => x)).toBeLessThan(1.95);
    const normal = (x: number) => (x < 0 ? 0.5 * chiSquareTail(x * x, 1) : 1 - 0.5 * chiSquareTail(x * x, 1));
    expect(distanceTo(sampleOf(draws.normal), normal)).toBeLessThan(1.95);
    // Abramowitz & Stegun (1964), 26.7.3 for three degrees of freedom.
    const student = (t: number) => {
      const angle = Math.atan(t / Math.sqrt(3));
      return 0.5 + (angle + Math.sin(angle) * Math.cos(angle)) / Math.PI;
    };
    expect(
      distanceTo(
        sampleOf(() => draws.studentT(3)),
        student,
      ),
    ).toBeLessThan(1.95);
  });

  it("below(6) falls on each of 0 to 5 as often (chi-square of 5 degrees of freedom, 0.1 %)", () => {
    const draws = randomDraws(3);
    const found = new Float64Array(6);
    for (let i = 0; i < count; i++) found[draws.below(6)]++;
    const chiSquare = squaresAbout(found, count / 6) / (count / 6);
    expect(mean(found)).toBe(count / 6);
    expect(chiSquareTail(chiSquare, 5)).toBeGreaterThan(0.001);
  });

  it("goes on from its state as if it had never stopped, for any seed", () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 0, max: 20 }), (seed, taken) => {
        const draws = randomDraws(seed);
        for (let i = 0; i < taken; i++) draws.normal();
        const resumed = resumedDraws(JSON.parse(JSON.stringify(draws.state())));
        for (let i = 0; i < 5; i++) expect(resumed.uniform()).toBe(draws.uniform());
      }),
    );
  });
});

describe("shuffles", () => {
  it("all six orders of three come up as often (chi-square of 5 degrees of freedom, 0.1 %)", () => {
    const draws = randomDraws(9);
    const found = new Map<string, number>();
    for (let i = 0; i < count; i++) {
      const order = shuffledOrder(draws, 3).join("");
      found.set(order, (found.get(order) ?? 0) + 1);
    }
    expect(found.size).toBe(6);
    const chiSquare = squaresAbout([...found.values()], count / 6) / (count / 6);
    expect(chiSquareTail(chiSquare, 5)).toBeGreaterThan(0.001);
  });

  it("keeps every value, and leaves those at other places alone", () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { minLength: 2, maxLength: 12 }), fc.integer(), (values, seed) => {
        const shuffled = [...values];
        const places = values.map((_, i) => i).filter((i) => i % 2 === 0);
        shuffleInPlace(shuffled, places, randomDraws(seed));
        values.forEach((value, i) => {
          if (i % 2 === 1) expect(shuffled[i]).toBe(value);
        });
        expect([...shuffled].sort()).toEqual([...values].sort());
      }),
    );
  });
});
