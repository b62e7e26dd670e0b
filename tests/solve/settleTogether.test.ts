import { describe, expect, it } from "vitest";
import type { FlowCondition } from "../../shared/engine/condition";
import type { FixedPoint } from "../../shared/engine/solve/fixedPoint";
import { oneSidedFixedPoint } from "../../shared/engine/solve/oneSidedFixedPoint";
import type { PreparedSection } from "../../shared/engine/solve/preparedSection";
import { settleTogether } from "../../shared/engine/solve/settleTogether";
import { symmetricFixedPoints } from "../../shared/engine/solve/symmetricFixedPoints";
import { twoSidedFixedPoint, twoSidedFixedPoints } from "../../shared/engine/solve/twoSidedFixedPoints";
import { prepared, quietCondition } from "./sections";

const condition: FlowCondition = { reynolds: 7e4, sandGrainRoughnessRatio: 3e-4, turbulenceIntensity: 0.01 };

/** Separation distances of a state from the front along either side, node steps. */
function distancesOf(section: PreparedSection, point: FixedPoint | null): { lower: number; upper: number } {
  if (point === null) throw new Error("no state was found");
  const { front } = section.fullFlow();
  return { lower: point.flow.wake.lower - front, upper: front + section.nodes.count - point.flow.wake.upper };
}

describe("settleTogether", () => {
  const section = prepared({ family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 }, 160, 0.1);
  const points = twoSidedFixedPoints(section, condition);

  it("comes back to a fixed point from 0.7 of a node step away on either side, within 0.02 of a step", () => {
    expect(points.length).toBeGreaterThan(0);
    const { lower, upper } = distancesOf(section, points[0]);
    for (const [a, b] of [
      [0.7, 0.7],
      [-0.7, 0.7],
      [0.7, -0.7],
    ]) {
      const settled = settleTogether(section, condition, { lower: lower + a, upper: upper + b });
      const again = distancesOf(section, settled);
      expect(Math.abs(again.lower - lower)).toBeLessThan(0.02);
      expect(Math.abs(again.upper - upper)).toBeLessThan(0.02);
    }
  });

  it("gives layers that have just separated where the wake assumes it, on both sides", () => {
    const { lower, upper } = distancesOf(section, points[0]);
    const settled = settleTogether(section, condition, { lower: lower + 0.5, upper });
    for (const layer of [settled?.lower, settled?.upper]) {
      expect(layer?.residual).toBeLessThanOrEqual(0);
      expect(layer?.residual).toBeGreaterThan(-2e-5);
    }
  });

  it("gives up far from any fixed point and where a side leaves its section", () => {
    const { count } = section.nodes;
    expect(settleTogether(section, condition, { lower: 0.2 * count, upper: 0.1 * count })).toBeNull();
    expect(settleTogether(section, condition, { lower: -1, upper: 0.4 * count })).toBeNull();
  });

  it("agrees with a circle's one-sided state found from a guess that is off by three steps", () => {
    const circle = prepared({ family: "circle", diameter: 1 });
    const critical = quietCondition(3.4e5);
    const found = oneSidedFixedPoint(circle, critical, symmetricFixedPoints(circle, critical));
    const { lower, upper } = distancesOf(circle, found);
    const again = distancesOf(circle, twoSidedFixedPoint(circle, critical, { lower: lower + 3, upper }));
    expect(Math.abs(again.lower - lower)).toBeLessThan(0.02);
    expect(Math.abs(again.upper - upper)).toBeLessThan(0.02);
  });
});
