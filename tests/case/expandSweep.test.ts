import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expandSweep } from "../../shared/document/expandSweep";

describe("expandSweep(sweep)", () => {
  it("of a list is the list", () => {
    expect(expandSweep([3, 1, 2])).toEqual([3, 1, 2]);
  });

  it("of a linear range has equal steps and meets both ends exactly", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        fc.integer({ min: 2, max: 300 }),
        (from, to, count) => {
          const values = expandSweep({ from, to, count });
          expect(values).toHaveLength(count);
          expect(values[0]).toBe(from);
          expect(values[count - 1]).toBe(to);
          values.forEach((value, i) => {
            expect(Math.abs(value - (from + ((to - from) * i) / (count - 1)))).toBeLessThan(1e-9);
          });
        },
      ),
    );
  });

  it("of a log range has equal ratios and meets both ends exactly", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1e8, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e8, noNaN: true }),
        fc.integer({ min: 3, max: 300 }),
        (from, to, count) => {
          const values = expandSweep({ from, to, count, spacing: "log" });
          expect(values[0]).toBe(from);
          expect(values[count - 1]).toBe(to);
          const ratio = (to / from) ** (1 / (count - 1));
          for (let i = 1; i < count; i++) expect(Math.abs(values[i] / values[i - 1] / ratio - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it("throws for a range of one value and for a log range that touches 0", () => {
    expect(() => expandSweep({ from: 1, to: 2, count: 1 })).toThrow(RangeError);
    expect(() => expandSweep({ from: 0, to: 2, count: 3, spacing: "log" })).toThrow(RangeError);
  });
});
