import { describe, expect, it } from "vitest";
import { depthPeak } from "../../shared/engine/wake/depthPeak";

describe("depthPeak", () => {
  it("leaves the suction of a plate and of a long section alone, to 1 %", () => {
    expect(depthPeak(0, 2.4)).toBe(1);
    expect(depthPeak(0.1, 2.4)).toBeLessThan(1.01);
    expect(depthPeak(2, 2.4)).toBeLessThan(1.01);
  });

  it("of a wide wake is strongest near length/height 0.62 (Bearman & Trueman 1972; Nakaguchi et al. 1968: 2/3), to 20 %", () => {
    const lengths = Array.from({ length: 200 }, (_, i) => 0.01 * (i + 1));
    const shares = lengths.map((length) => depthPeak(length, 2.4));
    const strongest = lengths[shares.indexOf(Math.max(...shares))];
    expect(Math.abs(strongest / 0.62 - 1)).toBeLessThan(0.2);
  });

  it("is none of layers that leave a rounded or pointed front, whatever stands behind", () => {
    for (let length = 0.05; length < 3; length += 0.05) expect(depthPeak(length, 1.6)).toBe(1);
  });

  it("is continuous in the wake's width", () => {
    for (const width of [1.8, 2.2]) {
      const step = depthPeak(0.6, width + 1e-6) - depthPeak(0.6, width - 1e-6);
      expect(Math.abs(step)).toBeLessThan(1e-5);
    }
  });
});
