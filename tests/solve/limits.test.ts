import { describe, expect, it } from "vitest";
import type { FlowCondition } from "../../shared/engine/condition";
import { CONDITION_LIMITS } from "../../shared/engine/solve/checkCondition";
import { traceDragCurve } from "../../shared/engine/solve/dragCurve";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { nodesOf } from "../flow/sections";
import { prepared, quietCondition } from "./sections";

const circle = prepared({ family: "circle", diameter: 1 }, 80);
const good = quietCondition(1e5);

describe("solveCondition refuses a condition out of range, naming the field, the value and the range", () => {
  const cases: readonly [string, FlowCondition, string][] = [
    ["reynolds", { ...good, reynolds: 999 }, "Reynolds number is 999; it must lie between 1000 and 100000000."],
    ["reynolds", { ...good, reynolds: -5 }, "Reynolds number is -5"],
    ["reynolds", { ...good, reynolds: 2e8 }, "Reynolds number is 200000000"],
    ["reynolds", { ...good, reynolds: Number.NaN }, "Reynolds number is NaN"],
    ["reynolds", { ...good, reynolds: Number.POSITIVE_INFINITY }, "Reynolds number is Infinity"],
    ["sandGrainRoughnessRatio", { ...good, sandGrainRoughnessRatio: -1e-6 }, "ks/D is -0.000001"],
    ["sandGrainRoughnessRatio", { ...good, sandGrainRoughnessRatio: 0.06 }, "between 0 and 0.05."],
    ["sandGrainRoughnessRatio", { ...good, sandGrainRoughnessRatio: Number.NaN }, "ks/D is NaN"],
    ["turbulenceIntensity", { ...good, turbulenceIntensity: -0.01 }, "turbulence intensity is -0.01"],
    ["turbulenceIntensity", { ...good, turbulenceIntensity: 0.21 }, "between 0 and 0.2."],
    [
      "trips[1].heightRatio",
      {
        ...good,
        trips: [
          { side: "upper", arcRatio: 0.4, heightRatio: 0.01 },
          { side: "lower", arcRatio: 0.4, heightRatio: 0 },
        ],
      },
      "trip height / D is 0",
    ],
    [
      "trips[0].arcRatio",
      { ...good, trips: [{ side: "upper", arcRatio: -0.1, heightRatio: 0.01 }] },
      "trip position / D is -0.1",
    ],
  ];
  for (const [field, condition, words] of cases) {
    it(`${field}: ${words}`, () => {
      const { states, rising, falling, problem } = solveCondition(circle, condition);
      expect(states).toEqual([]);
      expect([rising, falling]).toEqual([null, null]);
      expect(problem?.code).toBe("out-of-range");
      expect(problem?.field).toBe(field);
      expect(problem?.message).toContain(words);
    });
  }

  it("accepts the ends of every range", () => {
    for (const reynolds of CONDITION_LIMITS.reynolds) {
      for (const sandGrainRoughnessRatio of CONDITION_LIMITS.sandGrainRoughnessRatio) {
        for (const turbulenceIntensity of CONDITION_LIMITS.turbulenceIntensity) {
          const { problem, states } = solveCondition(circle, {
            reynolds,
            sandGrainRoughnessRatio,
            turbulenceIntensity,
          });
          expect(problem?.code).not.toBe("out-of-range");
          for (const state of states) expect(Number.isFinite(state.dragCoefficient)).toBe(true);
        }
      }
    }
  });
});

describe("solveCondition says why when nothing converges", () => {
  it("a thin ellipse across the stream: no fixed point, with the section and the Reynolds number", () => {
    const thin = prepared({ family: "ellipse", length: 0.05, height: 1 }, 200);
    const { states, rising, falling, problem } = solveCondition(thin, quietCondition(1e5));
    if (states.length > 0) {
      // A closure that does reach it is no fault; then it must be a bluff plate's drag.
      expect(states[0].dragCoefficient).toBeGreaterThan(1.5);
      return;
    }
    expect([rising, falling]).toEqual([null, null]);
    expect(problem?.code).toBe("no-fixed-point");
    expect(problem?.message).toMatch(/ellipse.*Re 1\.000e\+5: no separation point was found/);
  });
});

describe("prepareSection", () => {
  it("refuses an incidence that is no angle or beyond half a turn", () => {
    const nodes = nodesOf({ family: "ellipse", length: 2, height: 1 }, 40);
    for (const incidence of [Number.NaN, 3.2, -4, Number.POSITIVE_INFINITY]) {
      const refused = prepareSection(nodes, incidence);
      expect(refused.ok).toBe(false);
      if (refused.ok) continue;
      expect(refused.problem.code).toBe("incidence-out-of-range");
      expect(refused.problem.field).toBe("incidence");
      expect(refused.problem.message).toContain(String(incidence));
    }
  });
});

describe("traceDragCurve", () => {
  it("throws when the Reynolds numbers do not rise, giving both", () => {
    expect(() => traceDragCurve(circle, [quietCondition(2e5), quietCondition(1e5)])).toThrow(
      new RangeError("Reynolds numbers must rise; 100000 follows 200000."),
    );
  });

  it("keeps a problem in its place and goes on", () => {
    const curve = traceDragCurve(circle, [quietCondition(10), quietCondition(1e5), quietCondition(1e9)]);
    expect(curve.map(({ problem }) => problem?.code ?? null)).toEqual(["out-of-range", null, "out-of-range"]);
    expect(curve.map(({ rising }) => rising)).toEqual([null, 0, null]);
  });

  it("gives an empty curve for no conditions", () => {
    expect(traceDragCurve(circle, [])).toEqual([]);
  });
});
