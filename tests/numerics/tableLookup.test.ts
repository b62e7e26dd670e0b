import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { intervalAt, valueInTable } from "../../shared/numerics/tableLookup";

const risingTable = fc
  .array(fc.double({ min: 1e-3, max: 10, noNaN: true }), { minLength: 2, maxLength: 40 })
  .map((steps) => steps.map((_, i) => steps.slice(0, i + 1).reduce((sum, step) => sum + step, 0)));

describe("intervalAt(values, x)", () => {
  it("is the interval that a walk along the table comes to", () => {
    fc.assert(
      fc.property(risingTable, fc.double({ min: -5, max: 450, noNaN: true }), (values, x) => {
        let walked = 0;
        while (walked + 2 < values.length && values[walked + 1] <= x) walked++;
        expect(intervalAt(values, x)).toBe(walked);
      }),
    );
  });

  it("begins an interval at its lower end, and keeps to the first and the last one outside", () => {
    const values = [0, 1, 3, 7];
    expect([-1, 0, 0.99, 1, 3, 6.99, 7, 99].map((x) => intervalAt(values, x))).toEqual([0, 0, 0, 1, 2, 2, 2, 2]);
  });

  it("leaves later intervals out when told how many count, and can run past the last value", () => {
    expect(intervalAt([0, 1, 3, 7], 5, 1)).toBe(0);
    // Periodic tables have no last value: their last interval ends at the period.
    expect(intervalAt([0, 1, 3], 3.5, 3)).toBe(2);
  });
});

describe("valueInTable(xs, ys, x)", () => {
  it("gives a straight line back exactly where it can, and its rounding elsewhere", () => {
    fc.assert(
      fc.property(risingTable, fc.double({ min: 0, max: 1, noNaN: true }), (xs, share) => {
        const ys = xs.map((x) => 3 - 2 * x);
        const x = xs[0] + share * (xs[xs.length - 1] - xs[0]);
        expect(valueInTable(xs, ys, x)).toBeCloseTo(3 - 2 * x, 10);
        xs.forEach((node, i) => {
          expect(valueInTable(xs, ys, node)).toBe(ys[i]);
        });
      }),
    );
  });

  it("rises wherever the table rises", () => {
    fc.assert(
      fc.property(
        risingTable,
        risingTable,
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        (a, b, random) => {
          const size = Math.min(a.length, b.length);
          const [xs, ys] = [a.slice(0, size), b.slice(0, size)];
          const at = Array.from({ length: 20 }, () => xs[0] + random.next().value * (xs[size - 1] - xs[0])).sort(
            (p, q) => p - q,
          );
          const values = at.map((x) => valueInTable(xs, ys, x));
          values.slice(1).forEach((value, i) => {
            expect(value).toBeGreaterThanOrEqual(values[i] - 1e-12);
          });
        },
      ),
    );
  });

  it("holds the ends outside and has no value for NaN", () => {
    expect(valueInTable([1, 2], [5, 9], 0)).toBe(5);
    expect(valueInTable([1, 2], [5, 9], 3)).toBe(9);
    expect(valueInTable([1, 2], [5, 9], Number.NaN)).toBeNaN();
  });
});
