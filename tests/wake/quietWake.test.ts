import { describe, expect, it } from "vitest";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { nodesOf, unwrap } from "../flow/sections";

const dragOf = (
  spec: Parameters<typeof nodesOf>[0],
  wake: { readonly floorGapRatio?: number; readonly splitterPlate?: boolean },
  reynolds: number,
) => {
  const section = unwrap(prepareSection(nodesOf(spec, 200), 0, undefined, wake.floorGapRatio, wake.splitterPlate));
  const { states, problem } = solveCondition(section, {
    reynolds,
    sandGrainRoughnessRatio: 1e-5,
    turbulenceIntensity: 0.001,
  });
  if (states.length === 0) throw new Error(problem?.message);
  return states[0].dragCoefficient;
};

describe("sections whose wake is kept from shedding", () => {
  const circle = { family: "circle", diameter: 1 } as const;
  const plate = { family: "roundedRectangle", length: 0.1, height: 1, edgeRadius: 0.01 } as const;

  it("Apelt & West 1975 (from memory): a cylinder with a long splitter plate has Cd 0.80 within 15 %, a plate 1.38 within 15 %", () => {
    expect(Math.abs(dragOf(circle, { splitterPlate: true }, 3e4) / 0.8 - 1)).toBeLessThan(0.15);
    expect(Math.abs(dragOf(plate, { splitterPlate: true }, 3e4) / 1.38 - 1)).toBeLessThan(0.15);
  });

  it("Nishino, Roberts & Zhang 2007 (from memory): over a moving floor a cylinder has Cd 0.95 at gap / D 0.1 to 0.3, within 15 %", () => {
    for (const floorGapRatio of [0.1, 0.2, 0.3]) {
      expect(Math.abs(dragOf(circle, { floorGapRatio }, 1e5) / 0.95 - 1)).toBeLessThan(0.15);
    }
  });

  it("Nishino, Roberts & Zhang 2007 (from memory): from gap / D 0.5 on it has what it has in open water, about 1.3, within 15 %", () => {
    for (const floorGapRatio of [0.5, 1]) {
      expect(Math.abs(dragOf(circle, { floorGapRatio }, 1e5) / 1.3 - 1)).toBeLessThan(0.15);
    }
  });

  it("Roshko, Steinolfson & Chattoorgoon 1975 (from memory): on a floor at rest a cylinder has Cd 0.8; without the floor's layer the engine is above, by less than half", () => {
    const resting = dragOf(circle, { floorGapRatio: 0 }, 2e4);
    expect(resting).toBeGreaterThan(0.8);
    expect(resting).toBeLessThan(1.2);
  });

  it("sheds on both sides alike: no one-sided state with a splitter plate at any Reynolds number", () => {
    const section = unwrap(prepareSection(nodesOf(circle, 160), 0, undefined, undefined, true));
    for (const reynolds of [1e5, 2e5, 3e5, 4e5, 1e6]) {
      const { states } = solveCondition(section, {
        reynolds,
        sandGrainRoughnessRatio: 1e-5,
        turbulenceIntensity: 0.001,
      });
      expect(states.length).toBeGreaterThan(0);
      for (const state of states) expect(state.liftCoefficient).toBe(0);
    }
  });
});
