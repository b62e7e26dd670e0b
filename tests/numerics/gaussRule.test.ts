import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gaussRule } from "../../shared/numerics/gaussRule";
import { interpolationWeights, panelPolynomial } from "../../shared/numerics/panelPolynomial";

describe("Gauss-Legendre rule", () => {
  test("ten points: Abramowitz & Stegun (1964), table 25.4, to its digits", () => {
    const { abscissae, weights } = gaussRule(10);
    const table = [
      [0.14887433898163122, 0.29552422471475287],
      [0.4333953941292472, 0.26926671930999635],
      [0.6794095682990244, 0.21908636251598204],
      [0.8650633666889845, 0.1494513491505806],
      [0.9739065285171717, 0.06667134430868814],
    ];
    table.forEach(([x, w], i) => {
      expect(abscissae[5 + i]).toBeCloseTo(x, 14);
      expect(abscissae[4 - i]).toBeCloseTo(-x, 14);
      expect(weights[5 + i]).toBeCloseTo(w, 14);
    });
  });

  test("integrates powers to degree 2 n - 1 and not beyond", () => {
    for (const order of [1, 3, 7, 16]) {
      const { abscissae, weights } = gaussRule(order);
      const power = (p: number) => abscissae.reduce((sum, x, i) => sum + weights[i] * x ** p, 0);
      for (let p = 0; p < 2 * order; p += 2) expect(power(p)).toBeCloseTo(2 / (p + 1), 12);
      expect(Math.abs(power(2 * order) - 2 / (2 * order + 1))).toBeGreaterThan(1e-10);
    }
  });

  test("an order out of range is refused", () => {
    expect(() => gaussRule(0)).toThrow("order is 0");
    expect(() => gaussRule(2.5)).toThrow("whole number");
  });
});

describe("polynomial of a panel", () => {
  const panel = panelPolynomial(gaussRule(8));
  const cubic = (x: number) => 2 * x ** 3 - x + 0.5;

  test("interpolates and differentiates a cubic exactly", () => {
    const values = Array.from(panel.abscissae, cubic);
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), (x) => {
        const weights = interpolationWeights(panel, x, new Float64Array(8));
        expect(values.reduce((sum, value, i) => sum + weights[i] * value, 0)).toBeCloseTo(cubic(x), 11);
      }),
    );
    for (let i = 0; i < 8; i++) {
      const slope = values.reduce((sum, value, k) => sum + panel.differentiation[i * 8 + k] * value, 0);
      expect(slope).toBeCloseTo(6 * panel.abscissae[i] ** 2 - 1, 11);
    }
  });
});
