import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degreesOf, fractionOf, fractionOr, percentOf, radiansOf } from "../../shared/numerics/degreesAndPercent";

/** A number as a person writes it: up to 15 digits. */
const written = fc
  .tuple(fc.integer({ min: -1e15 + 1, max: 1e15 - 1 }), fc.integer({ min: 0, max: 18 }))
  .map(([digits, places]) => Number(`${digits}e-${places}`));

describe("degrees and per cent", () => {
  it("are pi / 180 and 1 / 100", () => {
    expect(radiansOf(180)).toBe(Math.PI);
    expect(radiansOf(-90)).toBe(-Math.PI / 2);
    expect(degreesOf(Math.PI / 6)).toBeCloseTo(30, 13);
    expect(fractionOf(2.5)).toBe(0.025);
    expect(percentOf(0.5)).toBe(50);
    expect([fractionOr(undefined, 0.9), fractionOr(95, 0.9)]).toEqual([0.9, 0.95]);
  });

  it("come back as they were written, to the last of 15 digits", () => {
    fc.assert(
      fc.property(written, (value) => {
        expect(percentOf(fractionOf(value))).toBe(value);
        expect(degreesOf(radiansOf(value))).toBe(value);
      }),
    );
    // Plain multiplication does not do that.
    expect((0.23 / 100) * 100).not.toBe(0.23);
  });
});
