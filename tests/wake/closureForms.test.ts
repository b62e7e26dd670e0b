import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { afterbodySuctionShare } from "../../shared/engine/wake/afterbody";
import { roshkoStrouhal, sheddingWidth } from "../../shared/engine/wake/basePressure";
import { outflowStrengths } from "../../shared/engine/wake/outflow";
import { nodesOf } from "../flow/sections";

const positive = (max: number) => fc.double({ min: 0.01, max, noNaN: true });

describe("afterbodySuctionShare: 1 / (1 + c L^2 / d')", () => {
  it("leaves all of the suction without an afterbody and half of it where c L^2 is the width d'", () => {
    expect(afterbodySuctionShare(0, 0.7, 1.37)).toBe(1);
    // L = 2, d' = 3, c = 3/4.
    expect(afterbodySuctionShare(2, 3, 0.75)).toBeCloseTo(0.5, 14);
    // A third: c L^2 = 2 d'.
    expect(afterbodySuctionShare(1, 0.6, 1.2)).toBeCloseTo(1 / 3, 14);
  });

  it("the ratio of what is lost to what is left (1 - s) / s, grows as c, L^2 and 1 / d'", () => {
    const loss = (L: number, width: number, c: number) => 1 / afterbodySuctionShare(L, width, c) - 1;
    fc.assert(
      fc.property(positive(4), positive(3), positive(3), (L, width, c) => {
        const one = loss(L, width, c);
        expect(loss(2 * L, width, c) / one).toBeCloseTo(4, 6);
        expect(loss(L, 2 * width, c) / one).toBeCloseTo(0.5, 6);
        expect(loss(L, width, 3 * c) / one).toBeCloseTo(3, 6);
      }),
    );
  });
});

describe("sheddingWidth: the geometric mean of displacement width and width at separation", () => {
  it("is the side of the square that has the area of their rectangle", () => {
    expect(sheddingWidth(4, 1)).toBeCloseTo(2, 14);
    expect(sheddingWidth(0.5, 0.9)).toBeCloseTo(Math.sqrt(0.45), 14);
    expect(sheddingWidth(0, 1)).toBe(0);
  });

  it("lies between the two, as near to one as to the other in ratio", () => {
    fc.assert(
      fc.property(positive(3), positive(3), (a, b) => {
        const width = sheddingWidth(a, b);
        expect(width / a / (b / width)).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe("roshkoStrouhal (Roshko 1954, NACA TN 3169)", () => {
  it("is 0.16 for a wake of width D and speed U, grows with the speed and falls with the width", () => {
    expect(roshkoStrouhal(1, 1)).toBeCloseTo(0.16, 14);
    expect(roshkoStrouhal(1.5, 1)).toBeCloseTo(0.24, 14);
    expect(roshkoStrouhal(1, 2)).toBeCloseTo(0.08, 14);
  });
});

describe("outflowStrengths: v_n = a sin^2(pi xi) over the base", () => {
  const nodes = nodesOf({ family: "circle", diameter: 1 }, 80);
  const step = Math.PI / 80;

  /** Integral of sin^2(pi xi) ds between two shares of a base of this length, by Simpson's rule. */
  function emitted(from: number, to: number, length: number): number {
    const parts = 200;
    const h = (to - from) / parts;
    const f = (i: number) => Math.sin(Math.PI * (from + i * h)) ** 2;
    let sum = f(0) + f(parts);
    for (let i = 1; i < parts; i++) sum += (i % 2 === 1 ? 4 : 2) * f(i);
    return (sum * h * length) / 3;
  }

  it("each node has what half a step to either side of it blows, on a circle", () => {
    const [lower, upper] = [22.3, 58.9];
    const strengths = outflowStrengths(nodes, lower, upper);
    const share = (position: number) => Math.min(1, Math.max(0, (position - lower) / (upper - lower)));
    for (let j = 0; j < 80; j++) {
      const expected = emitted(share(j - 0.5), share(j + 0.5), (upper - lower) * step);
      expect(Math.abs(strengths[j] - expected)).toBeLessThan(1e-10);
    }
  });

  it("as the upper half of a base and its mirror image it begins at full strength", () => {
    const [lower, upper] = [40, 58];
    const strengths = outflowStrengths(nodes, lower, upper, 0.5);
    const share = (position: number) => 0.5 + (0.5 * Math.min(18, Math.max(0, position - lower))) / 18;
    for (let j = 40; j <= 58; j++) {
      const expected = emitted(share(j - 0.5), share(j + 0.5), 2 * 18 * step);
      expect(Math.abs(strengths[j] - expected)).toBeLessThan(1e-10);
    }
  });
});
