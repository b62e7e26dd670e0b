import { describe, expect, it } from "vitest";
import type { FlowCondition } from "../../shared/engine/condition";
import { settleTogether } from "../../shared/engine/solve/settleTogether";
import { twoSidedFixedPoint, twoSidedFixedPoints } from "../../shared/engine/solve/twoSidedFixedPoints";
import { prepared, quietCondition } from "./sections";

const condition: FlowCondition = { reynolds: 7e4, sandGrainRoughnessRatio: 3e-4, turbulenceIntensity: 0.01 };

describe("settleTogether", () => {
  const section = prepared({ family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 }, 160, 0.1);
  const points = twoSidedFixedPoints(section, condition);

  it("comes back to a fixed point from 0.7 of a node step away on either side, within 0.01 of a step", () => {
    expect(points.length).toBeGreaterThan(0);
    const { lower, upper } = points[0].flow.wake;
    for (const [a, b] of [
      [0.7, 0.7],
      [-0.7, 0.7],
      [0.7, -0.7],
    ]) {
      const settled = settleTogether(section, section.fullFlow(), condition, lower + a, upper + b);
      expect(settled).not.toBeNull();
      expect(Math.abs((settled?.flow.wake.lower ?? 0) - lower)).toBeLessThan(0.01);
      expect(Math.abs((settled?.flow.wake.upper ?? 0) - upper)).toBeLessThan(0.01);
    }
  });

  it("gives layers that have just separated where the wake assumes it, on both sides", () => {
    const { lower, upper } = points[0].flow.wake;
    const settled = settleTogether(section, section.fullFlow(), condition, lower + 0.5, upper);
    for (const layer of [settled?.lower, settled?.upper]) {
      expect(layer?.residual).toBeLessThanOrEqual(0);
      expect(layer?.residual).toBeGreaterThan(-2e-5);
    }
  });

  it("gives up far from any fixed point and where a side leaves its section", () => {
    const { count } = section.nodes;
    expect(settleTogether(section, section.fullFlow(), condition, 0.2 * count, 0.9 * count)).toBeNull();
    expect(settleTogether(section, section.fullFlow(), condition, -1, 0.6 * count)).toBeNull();
  });

  it("agrees with a circle's one-sided state found from a guess that is off by three steps", () => {
    const circle = prepared({ family: "circle", diameter: 1 });
    const critical = quietCondition(3.4e5);
    const found = twoSidedFixedPoint(circle, critical, { lower: "early", upper: "late" });
    expect(found).not.toBeNull();
    const { lower, upper } = found?.flow.wake ?? { lower: 0, upper: 0 };
    const again = twoSidedFixedPoint(circle, critical, { lower: "early", upper: "late" }, { lower: lower + 3, upper });
    expect(Math.abs((again?.flow.wake.lower ?? 0) - lower)).toBeLessThan(0.02);
    expect(Math.abs((again?.flow.wake.upper ?? 0) - upper)).toBeLessThan(0.02);
  });
});
