import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findRoot, findSwitch } from "../../shared/numerics/rootFinder";

/** Functions with the place of their only zero in the bracket, in closed form; the last five are known to be hard. */
const zeros: readonly (readonly [name: string, f: (x: number) => number, from: number, to: number, root: number])[] = [
  ["a line", (x) => 3 * x - 1, -5, 7, 1 / 3],
  ["x^2 - 2", (x) => x * x - 2, 0, 2, Math.SQRT2],
  ["x^3", (x) => x ** 3, -1, 1.7, 0],
  ["exp(x) - 10", (x) => Math.exp(x) - 10, -100, 5, Math.LN10],
  ["log(x)", Math.log, 1e-12, 50, 1],
  ["cos(x)", Math.cos, 0, 3, Math.PI / 2],
  ["(x - 1)^9, flat at its zero", (x) => (x - 1) ** 9, 0, 3.1, 1],
  ["a step of width 1e-9", (x) => Math.tanh((x - 0.7) * 1e9), -3, 2, 0.7],
  ["a pole beside the zero", (x) => 1 / (x - 1.001) + 1000, -1, 1.0009, 1],
  ["the cube root", (x) => Math.cbrt(x - 0.3), -9, 1, 0.3],
  ["a zero at the rim of a plateau", (x) => (x < 0.2 ? 1e-3 : 1e-3 - (x - 0.2) ** 3), 0, 1, 0.3],
];

describe("findRoot(f, from, to)", () => {
  it.each(zeros)("finds the zero of %s in closed form, from either end", (_, f, from, to, root) => {
    // A zero of the ninth order is only known to where its value leaves the smallest numbers.
    for (const [a, b] of [
      [from, to],
      [to, from],
    ]) {
      expect(Math.abs(findRoot(f, a, b) - root)).toBeLessThanOrEqual(4e-15 * Math.max(1, Math.abs(root)));
    }
  });

  it.each(zeros)("asks no more often than twice what halving needs: %s", (_, f, from, to) => {
    let asked = 0;
    findRoot((x) => f(x) + 0 * asked++, from, to, { tolerance: 1e-12 });
    expect(asked).toBeLessThanOrEqual(2 * Math.ceil(Math.log2(Math.abs(to - from) / 1e-12)));
  });

  it("asks fewer than 15 times for a smooth function, where halving asks 52 times", () => {
    let asked = 0;
    const root = findRoot(
      (x) => {
        asked++;
        return Math.exp(x) - 2 - x;
      },
      0,
      2,
    );
    expect(Math.exp(root) - 2 - root).toBeCloseTo(0, 14);
    expect(asked).toBeLessThan(15);
  });

  it("finds where a function jumps through zero", () => {
    expect(findRoot((x) => (x < 0.123 ? 1 : -4), 0, 1)).toBeCloseTo(0.123, 15);
  });

  it("takes Newton's steps with a slope, and stays in the bracket where they leave it", () => {
    let asked = 0;
    const f = (x: number) => {
      asked++;
      return Math.atan(x - 1);
    };
    const root = findRoot(f, -40, 90, { slope: (x) => 1 / (1 + (x - 1) ** 2), guess: 60 });
    expect(root).toBeCloseTo(1, 14);
    expect(asked).toBeLessThan(25);
  });

  it("stops at the tolerance in x and at the one in f", () => {
    const f = (x: number) => x * x - 2;
    expect(Math.abs(findRoot(f, 0, 2, { tolerance: 1e-3 }) - Math.SQRT2)).toBeLessThan(1e-3);
    expect(Math.abs(f(findRoot(f, 0, 2, { valueTolerance: 1e-2 })))).toBeLessThanOrEqual(1e-2);
  });

  it("returns the end that is asked for, with the other one within twice the tolerance", () => {
    const rising = (x: number) => x ** 3 - 2;
    for (const tolerance of [1e-3, 1e-9, 0]) {
      const before = findRoot(rising, 0, 3, { tolerance, end: "from" });
      const after = findRoot(rising, 0, 3, { tolerance, end: "to" });
      expect(rising(before)).toBeLessThanOrEqual(0);
      expect(rising(after)).toBeGreaterThanOrEqual(0);
      expect(Math.cbrt(2) - before).toBeLessThanOrEqual(2 * tolerance + 1e-15);
      expect(after - Math.cbrt(2)).toBeLessThanOrEqual(2 * tolerance + 1e-15);
    }
  });

  it("returns an end whose value is 0 without asking further", () => {
    const never = () => {
      throw new Error("asked");
    };
    expect(findRoot(never, 3, 4, { endValues: [0, 1] })).toBe(3);
    expect(findRoot(never, 3, 4, { endValues: [1, 0] })).toBe(4);
  });

  it("refuses ends of one sign and ends without a value, and names them", () => {
    expect(() => findRoot((x) => x * x + 1, -1, 2)).toThrow("f(-1) is 2 and f(2) is 5; they must have opposite signs.");
    expect(() => findRoot((x) => -x * x - 1, -1, 2)).toThrow(RangeError);
    expect(() => findRoot(Math.sqrt, -1, 2)).toThrow(RangeError);
  });

  it("ends with a change of sign between neighbouring numbers for any cubic with one root in the bracket", () => {
    const number = fc.double({ min: -50, max: 50, noNaN: true });
    const positive = fc.double({ min: 1e-3, max: 50, noNaN: true });
    fc.assert(
      fc.property(number, positive, positive, positive, positive, (root, a, b, before, after) => {
        // Rises everywhere, so that the zero is the only one.
        const f = (x: number) => (x - root) * (a + b * (x - root) ** 2);
        const found = findRoot(f, root - before, root + after);
        expect(Math.abs(found - root)).toBeLessThanOrEqual(4 * Number.EPSILON * Math.max(Math.abs(root), 1e-3) + 1e-18);
      }),
      { numRuns: 300 },
    );
  });
});

describe("findSwitch(holds, holding, failing)", () => {
  it("closes on a known edge from either side, to neighbouring numbers or to the tolerance", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e3, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e3, noNaN: true }),
        fc.constantFrom(0, 1e-2),
        fc.boolean(),
        (edge, below, above, tolerance, rising) => {
          const holds = (x: number) => (rising ? x <= edge : x > edge);
          const found = rising
            ? findSwitch(holds, edge - below, edge + above, tolerance)
            : findSwitch(holds, edge + above, edge - below, tolerance);
          expect(holds(found.holding)).toBe(true);
          expect(holds(found.failing)).toBe(false);
          const gap = Math.abs(found.failing - found.holding);
          expect(gap).toBeLessThanOrEqual(Math.max(tolerance, Number.EPSILON * Math.max(1e-6, Math.abs(edge)) * 2));
        },
      ),
      { numRuns: 300 },
    );
  });
});
