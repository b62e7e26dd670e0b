import { describe, expect, it } from "vitest";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import type { SectionState } from "../../shared/engine/solution";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { prepared, quietCondition } from "./sections";

const rectangle = (length: number, edgeRadius = 0.01): SectionSpec => ({
  family: "roundedRectangle",
  length,
  height: 1,
  edgeRadius,
});
const rising = (spec: SectionSpec, incidence = 0): SectionState => {
  const { states } = solveCondition(prepared(spec, 240, incidence), quietCondition(1e5));
  expect(states.length).toBeGreaterThan(0);
  return states[0];
};
const dragOf = (spec: SectionSpec) => rising(spec).dragCoefficient;

describe("sections whose layers come back to the sides", () => {
  it("sharp rectangles of length/height 2.5, 3, 5, 10: 1.4 and 1.3 (White, table 7.2), 1.0 and 0.9 (EN 1991-1-4, figure 7.23), within 10 %", () => {
    for (const [length, published] of [
      [2.5, 1.4],
      [3, 1.3],
      [5, 1.0],
      [10, 0.9],
    ]) {
      expect(Math.abs(dragOf(rectangle(length)) / published - 1)).toBeLessThan(0.1);
    }
  });

  it("round nose and flat sharp rear, length/height 2, 4, 6: 0.70, 0.68, 0.64 (White, table 7.2, from memory), within 12 %", () => {
    for (const [length, published] of [
      [2, 0.7],
      [4, 0.68],
      [6, 0.64],
    ]) {
      const drag = dragOf({
        family: "dShape",
        length,
        height: 1,
        noseLength: 0.5,
        cornerRadius: 0.01,
        flatSide: "rear",
      });
      expect(Math.abs(drag / published - 1)).toBeLessThan(0.12);
    }
  });

  it("two long with semicircular ends: 0.4 (Blevins 1984, from memory), 0.33 to 0.5", () => {
    const drag = dragOf(rectangle(2, 0.5));
    expect(drag).toBeGreaterThan(0.33);
    expect(drag).toBeLessThan(0.5);
  });

  it("a puck's profile, 80 x 30 mm: drag falls with the edge radius from 2 to 15 mm without a jump, and the share of time reattached rises", () => {
    const states = Array.from({ length: 14 }, (_, i) => rising(rectangle(80 / 30, (i + 2) / 30)));
    const shares = states.map(({ intermittency }) => intermittency?.reattachedShare ?? 0);
    for (let i = 1; i < states.length; i++) {
      expect(states[i].dragCoefficient).toBeLessThan(states[i - 1].dragCoefficient);
      expect(shares[i]).toBeGreaterThanOrEqual(shares[i - 1] - 1e-3);
    }
    expect(shares[0]).toBeLessThan(0.5);
    expect(shares[13]).toBeGreaterThan(0.9);
  });

  it("the state is the mean of both flows weighed by time, and the reattached one shows its bubble in the layer", () => {
    const { intermittency, ...state } = rising(rectangle(80 / 30, 5 / 30));
    if (!intermittency) throw new Error("the flow keeps its kind");
    const { open, reattached, reattachedShare } = intermittency;
    for (const key of ["dragCoefficient", "basePressureCoefficient", "strouhal"] as const) {
      expect(state[key]).toBeCloseTo(open[key] + reattachedShare * (reattached[key] - open[key]), 12);
    }
    const { bubble, layer } = reattached.upper;
    expect(bubble).not.toBe(null);
    const inBubble = [...layer.arc].filter((_, i) => layer.layerKind[i] === 1);
    expect(inBubble[0]).toBeCloseTo(bubble?.separationArc ?? -1, 12);
    expect(inBubble[inBubble.length - 1]).toBeCloseTo(bubble?.reattachmentArc ?? -1, 12);
  });

  it("turned by 1e-6 rad it has the drag of no incidence, to 0.1 %", () => {
    const straight = dragOf(rectangle(80 / 30, 5 / 30));
    expect(Math.abs(rising(rectangle(80 / 30, 5 / 30), 1e-6).dragCoefficient / straight - 1)).toBeLessThan(1e-3);
  });

  it("a circle has no side to come back to", () => {
    expect(rising({ family: "circle", diameter: 1 }).intermittency).toBe(null);
  });
});
