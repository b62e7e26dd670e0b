import { describe, expect, it } from "vitest";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { prepared, quietCondition } from "./sections";

const rising = (length: number, reynolds: number, family: "ellipse" | "plate", edgeShare = 0.1): number => {
  const section = prepared(
    family === "ellipse"
      ? { family, length, height: 1 }
      : { family: "roundedRectangle", length, height: 1, edgeRadius: edgeShare * length },
  );
  const { states } = solveCondition(section, quietCondition(reynolds));
  expect(states.length).toBeGreaterThan(0);
  return states[0].dragCoefficient;
};

describe("thin sections across the stream", () => {
  it("plates of length/height 0.06 to 0.2 have an answer with any edges: 2.0 (EN 1991-1-4, figure 7.23) within 20 %, falling with the edge radius", () => {
    for (const length of [0.06, 0.08, 0.1, 0.2]) {
      const drags = [0.02, 0.1, 0.25, 0.5].map((share) => rising(length, 1e5, "plate", share));
      for (const drag of drags) expect(Math.abs(drag / 2 - 1)).toBeLessThan(0.2);
      expect(drags).toEqual([...drags].sort((a, b) => b - a));
    }
  });
});

describe("slender ellipses along the stream, layers laminar", () => {
  it("drag as Hoerner (1965, Fluid-Dynamic Drag, chapter 3, from memory) has it, 2 Cf (1 + c/t) + 1.1 t/c with Blasius's Cf, within 15 % from 2:1 to 6:1", () => {
    for (const length of [2, 3, 4, 6]) {
      const expected = ((2 * 1.328) / Math.sqrt(1e5 * length)) * (1 + length) + 1.1 / length;
      expect(Math.abs(rising(length, 1e5, "ellipse") / expected - 1)).toBeLessThan(0.15);
    }
  });
});
