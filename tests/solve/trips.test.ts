import { describe, expect, it } from "vitest";
import type { Trip } from "../../shared/engine/condition";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { prepared, quietCondition, unmatchedStates } from "./sections";

const circle = prepared({ family: "circle", diameter: 0.08 }, 160);

/** A trip of height / D at degrees from the nose of a circle. */
const wire = (side: Trip["side"], degrees: number, heightRatio: number): Trip => ({
  side,
  arcRatio: (degrees / 360) * Math.PI,
  heightRatio,
});
const pair = (degrees: number, heightRatio: number) => [
  wire("upper", degrees, heightRatio),
  wire("lower", degrees, heightRatio),
];
const solve = (reynolds: number, trips?: readonly Trip[]) =>
  solveCondition(circle, quietCondition(reynolds, 1e-5, trips));

describe("trips on a circle at Re 1e5", () => {
  it("wires of 1 % at 50 degrees turn both layers there and bring the drag down by a fifth or more", () => {
    const [bare] = solve(1e5).states;
    const { states } = solve(1e5, pair(50, 0.01));
    expect(states.length).toBe(1);
    for (const side of [states[0].upper, states[0].lower]) {
      expect(side.state).toBe("turbulent separation");
      expect(side.transitionCause).toBe("trip");
      expect(side.transitionArc).toBeCloseTo((50 / 360) * Math.PI, 3);
      expect(side.separationAngle).toBeGreaterThan(bare.lower.separationAngle + 0.2);
    }
    expect(states[0].dragCoefficient).toBeLessThan(0.8 * bare.dragCoefficient);
    expect(states[0].liftCoefficient).toBe(0);
  });

  it("wires too low to fire change nothing: Ue h / nu stays below 826", () => {
    expect(unmatchedStates(solve(1e5, pair(50, 0.002)).states, solve(1e5).states, 1e-9)).toEqual([]);
  });

  it("wires behind laminar separation change nothing", () => {
    expect(unmatchedStates(solve(1e5, pair(110, 0.01)).states, solve(1e5).states, 1e-9)).toEqual([]);
  });

  it("a wire further forward leaves a thicker layer, which separates sooner", () => {
    const [near] = solve(2e5, pair(30, 0.01)).states;
    const [far] = solve(2e5, pair(65, 0.01)).states;
    expect(near.lower.transitionCause).toBe("trip");
    expect(far.lower.transitionCause).toBe("trip");
    expect(near.lower.separationAngle).toBeLessThan(far.lower.separationAngle);
  });

  it("one wire on the upper side lifts: the tripped side separates later, and the mirrored wire mirrors all", () => {
    const upper = solve(1e5, [wire("upper", 50, 0.01)]).states;
    const lower = solve(1e5, [wire("lower", 50, 0.01)]).states;
    expect(upper.length).toBeGreaterThan(0);
    for (const state of upper) {
      expect(state.upper.transitionCause).toBe("trip");
      expect(state.upper.separationAngle).toBeGreaterThan(state.lower.separationAngle);
      expect(state.liftCoefficient).toBeGreaterThan(0.3);
    }
    expect(unmatchedStates(lower, upper, 2e-3, true)).toEqual([]);
  });
});

describe("trips stand still on the body", () => {
  it("at incidence the arc from the stagnation point changes, the place on the contour does not", () => {
    const spec = { family: "ellipse", length: 1.5, height: 1 } as const;
    const straight = prepared(spec, 160);
    const turned = prepared(spec, 160, 0.05);
    const trips = [
      { side: "upper", arcRatio: 0.5, heightRatio: 0.01 },
      { side: "lower", arcRatio: 0.5, heightRatio: 0.01 },
    ] as const;
    const [a] = solveCondition(straight, quietCondition(1e5, 1e-5, trips)).states;
    const [b] = solveCondition(turned, quietCondition(1e5, 1e-5, trips)).states;
    expect(a.upper.transitionCause).toBe("trip");
    expect(b.upper.transitionCause).toBe("trip");
    // Nose up moves the stagnation point below the nose: the upper layer has the longer way to its trip.
    const atRatio = straight.referenceWidth / turned.referenceWidth;
    expect(a.upper.transitionArc).toBeCloseTo(0.5, 3);
    expect((b.upper.transitionArc ?? 0) / atRatio).toBeGreaterThan(0.51);
    expect((b.lower.transitionArc ?? 1) / atRatio).toBeLessThan(0.49);
  });
});
