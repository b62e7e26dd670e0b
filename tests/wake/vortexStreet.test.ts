import { describe, expect, it } from "vitest";
import {
  dragTimesStrouhalAt,
  kronauerSpacingRatio,
  streetDrag,
  streetDragBracket,
  vortexStreetTable,
} from "../../shared/engine/wake/vortexStreet";
import { karmanStreet } from "../published/karman-1912";
import { kronauerStreets } from "../published/kronauer-1964";

describe("von Karman & Rubach 1912: drag of the stable street", () => {
  it("Cd d/a = 1.587 e - 0.628 e^2 at h/a = 0.2806, to the three digits printed", () => {
    for (const lag of [0.05, 0.1, 0.14, 0.2, 0.3]) {
      const printed = karmanStreet.dragLinear * lag + karmanStreet.dragQuadratic * lag * lag;
      expect(Math.abs(streetDrag(lag, karmanStreet.spacingRatio) - printed)).toBeLessThan(6e-4 * lag);
    }
  });
});

describe("Kronauer 1964, as used by Bearman 1967: street of least drag", () => {
  for (const { speedLag, spacingRatio, dragOnSpacing } of kronauerStreets) {
    it(`at a speed lag of ${speedLag}: h/a ${spacingRatio} and Cd d/a ${dragOnSpacing}, to the digits printed`, () => {
      const h = kronauerSpacingRatio(speedLag);
      expect(Math.abs(h - spacingRatio)).toBeLessThan(6e-5);
      expect(Math.abs(streetDrag(speedLag, h) - dragOnSpacing)).toBeLessThan(6e-5);
    });
  }

  it("has less drag than a street a little narrower or wider, at every lag", () => {
    for (const lag of [0.01, 0.1, 0.2, 0.3, 0.45]) {
      const h = kronauerSpacingRatio(lag);
      for (const change of [0.99, 1.01]) {
        expect(streetDragBracket(lag, change * h)).toBeGreaterThan(streetDragBracket(lag, h));
      }
    }
  });
});

describe("F(k) = Cd S of every street that obeys Bearman's universal number 0.181", () => {
  const street = vortexStreetTable();

  // Computed once from the three relations by an independent program; printed to three digits.
  for (const [k, printed] of [
    [1.034, 0.059],
    [1.214, 0.118],
    [1.321, 0.168],
    [1.395, 0.209],
    [1.45, 0.24],
    [1.496, 0.26],
  ]) {
    it(`F(${k}) = ${printed} to the digits printed`, () => {
      expect(Math.abs(dragTimesStrouhalAt(street, k) - printed)).toBeLessThan(5.5e-4);
    });
  }

  it("follows from the street's own relations at lags between the table's", () => {
    for (const lag of [0.0333, 0.101, 0.1777, 0.25, 0.3456]) {
      const h = kronauerSpacingRatio(lag);
      const k = (h * (1 - lag)) / 0.181;
      const direct = (1 - lag) * streetDrag(lag, h);
      expect(dragTimesStrouhalAt(street, k) / direct).toBeCloseTo(1, 4);
    }
  });

  it("rises up to k = 1.5, has its highest value of 0.27 above that, and is NaN outside the table", () => {
    const { speedRatio, dragTimesStrouhal } = street;
    for (let i = 1; i < speedRatio.length; i++) {
      expect(speedRatio[i]).toBeGreaterThan(speedRatio[i - 1]);
      if (speedRatio[i] < 1.5) expect(dragTimesStrouhal[i]).toBeGreaterThan(dragTimesStrouhal[i - 1]);
    }
    expect(Math.max(...dragTimesStrouhal)).toBeCloseTo(0.27, 2);
    expect(dragTimesStrouhalAt(street, 0.3)).toBeNaN();
    expect(dragTimesStrouhalAt(street, 5)).toBeNaN();
    expect(dragTimesStrouhalAt(street, Number.NaN)).toBeNaN();
  });

  it("gives a bluff plate its measured product: Cd S = 2.13 * 0.14 at k = sqrt(2.38) within 15 % (Fage & Johansen 1927, from memory)", () => {
    const ratio = dragTimesStrouhalAt(street, Math.sqrt(2.38)) / (2.13 * 0.14);
    expect(Math.abs(ratio - 1)).toBeLessThan(0.15);
  });
});
