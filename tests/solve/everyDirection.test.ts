import { describe, expect, it } from "vitest";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { squireYoungDrag } from "../../shared/engine/wake/closedWake";
import { nodesOf, unwrap } from "../flow/sections";
import { quietCondition } from "./sections";

describe("answers from every direction", () => {
  it("a circle is the same from all round: Cd and S within 0.5 %, lift 0 within 0.01", () => {
    const nodes = nodesOf({ family: "circle", diameter: 0.08 }, 120);
    for (const condition of [quietCondition(5e4), quietCondition(4e6, 1e-3)]) {
      const [front] = solveCondition(unwrap(prepareSection(nodes, 0)), condition).states;
      for (const incidence of [1e-6, 0.7, -1.6, 2.5, Math.PI]) {
        const [turned] = solveCondition(unwrap(prepareSection(nodes, incidence)), condition).states;
        expect(Math.abs(turned.dragCoefficient / front.dragCoefficient - 1)).toBeLessThan(5e-3);
        expect(Math.abs(turned.strouhal / front.strouhal - 1)).toBeLessThan(5e-3);
        expect(Math.abs(turned.liftCoefficient)).toBeLessThan(0.01);
      }
    }
  });

  it("a section turned by a half turn is its mirror image turned end for end: a D with its flat face ahead or behind, within 1 %", () => {
    const spec = { family: "dShape", length: 0.06, height: 0.05, noseLength: 0.025, cornerRadius: 0.004 } as const;
    const condition = quietCondition(8e4);
    const rear = solveCondition(
      unwrap(prepareSection(nodesOf({ ...spec, flatSide: "rear" }, 160), Math.PI)),
      condition,
    );
    const front = solveCondition(unwrap(prepareSection(nodesOf({ ...spec, flatSide: "front" }, 160), 0)), condition);
    expect(Math.abs(rear.states[0].dragCoefficient / front.states[0].dragCoefficient - 1)).toBeLessThan(0.01);
  });
});

describe("closed wakes", () => {
  it("a flat plate's momentum defect is its friction: Blasius 1908, Cd 1.328 / sqrt(Re) of one side, for any shape factor", () => {
    // theta = 0.664 L / sqrt(Re) at the trailing edge, where the speed is that of the stream.
    const reynolds = 1e5;
    expect(squireYoungDrag(0.664 / Math.sqrt(reynolds), 2.59, 1)).toBeCloseTo(1.328 / Math.sqrt(reynolds), 12);
  });

  it("ellipses of 12:1 and more run into the drag of turbulent struts: Cd = Cf (4 + 2 L/H + 120 (H/L)^2) on H within 20 %", () => {
    // Hoerner, Fluid-Dynamic Drag (1965), ch. 6, elliptical sections, from memory; Cf of Prandtl & Schlichting on L.
    for (const slenderness of [12, 16, 20]) {
      const nodes = nodesOf({ family: "ellipse", length: 0.1 * slenderness, height: 0.1 }, 200);
      const reynolds = 1e6;
      const [state] = solveCondition(unwrap(prepareSection(nodes, 0)), {
        reynolds,
        sandGrainRoughnessRatio: 1e-5,
        turbulenceIntensity: 0.01,
      }).states;
      const friction = 0.455 / Math.log10(reynolds * slenderness) ** 2.58;
      const expected = friction * (4 + 2 * slenderness + 120 / slenderness ** 2);
      expect(Math.abs(state.dragCoefficient / expected - 1)).toBeLessThan(0.2);
    }
  });
});
