import { describe, expect, it } from "vitest";
import type { ConditionOutcome, SectionState } from "../../shared/engine/solution";
import { closureNearFloor, floorNotes } from "../../shared/engine/solve/floorNotes";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { nodesOf, unwrap } from "../flow/sections";
import { halfCircle } from "../wake/halfCircle";

const stream = (reynolds: number, sandGrainRoughnessRatio = 1e-5) => ({
  reynolds,
  sandGrainRoughnessRatio,
  turbulenceIntensity: 0.005,
});

function first({ states, problem }: ConditionOutcome): SectionState {
  if (states.length === 0) throw new Error(problem?.message ?? "nothing found");
  return states[0];
}

function everyNumber(state: SectionState): number[] {
  const { dragCoefficient, liftCoefficient, strouhal, wakeWidth, basePressureCoefficient, upper, lower } = state;
  return [
    dragCoefficient,
    liftCoefficient,
    strouhal,
    wakeWidth,
    basePressureCoefficient,
    upper.separationAngle,
    lower.separationAngle,
    ...state.surfaceVelocity,
    ...state.pressureCoefficient,
    ...upper.layer.momentumThickness,
  ];
}

describe("solveCondition above a floor", () => {
  it("lying on it, every state separates where it says, within 0.02 D, unless it sits on a switch", () => {
    // Trips, apex and rough wall make layers that could separate in several places, far apart.
    const sections = [
      { family: "roundedTriangle", length: 0.1, height: 0.05, cornerRadius: 0.007, apex: "forward" },
      { family: "roundedRectangle", length: 0.031, height: 0.05, edgeRadius: 0.002 },
      { family: "circle", diameter: 0.08 },
    ] as const;
    const trips = [{ side: "upper", arcRatio: 0.39, heightRatio: 0.008 }] as const;
    let checked = 0;
    for (const spec of sections) {
      const section = unwrap(prepareSection(nodesOf(spec, 120), 0, undefined, 0));
      for (const reynolds of [1.9e4, 4e5, 7e7]) {
        for (const condition of [stream(reynolds, 8e-3), { ...stream(reynolds, 0), trips }]) {
          for (const { upper, onSwitch } of solveCondition(section, condition).states) {
            if (onSwitch) continue;
            checked++;
            const { arc } = upper.layer;
            expect(Math.abs(arc[arc.length - 1] - upper.separationArc)).toBeLessThanOrEqual(0.02);
          }
        }
      }
    }
    expect(checked).toBeGreaterThan(8);
  });

  it("far above it finds the states of the open stream: Cd, S and separation within 0.1 %, one circle and one puck profile", () => {
    for (const spec of [
      { family: "circle", diameter: 0.08 },
      { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.008 },
    ] as const) {
      const nodes = nodesOf(spec, 120);
      const open = first(solveCondition(unwrap(prepareSection(nodes, 0)), stream(1e5)));
      const section = unwrap(prepareSection(nodes, 0, undefined, 2000));
      expect(section.floor?.gapRatio).toBe(2000);
      const far = first(solveCondition(section, stream(1e5)));
      expect(Math.abs(far.dragCoefficient / open.dragCoefficient - 1)).toBeLessThan(1e-3);
      expect(Math.abs(far.strouhal / open.strouhal - 1)).toBeLessThan(1e-3);
      expect(Math.abs(far.upper.separationAngle / open.upper.separationAngle - 1)).toBeLessThan(1e-3);
      expect(Math.abs(far.liftCoefficient)).toBeLessThan(2e-3);
    }
  });

  it("a half circle lying on it is half of a circle of twice the Reynolds number whose wake a splitter plate parts: Cd within 3 %, half its S, in both regimes", () => {
    const half = unwrap(prepareSection(halfCircle(320), 0, undefined, 0));
    const circle = unwrap(
      prepareSection(nodesOf({ family: "circle", diameter: 1 }, 240), 0, undefined, undefined, true),
    );
    for (const reynolds of [1e5, 4e6]) {
      const lying = first(solveCondition(half, stream(reynolds / 2, 2e-5)));
      const free = first(solveCondition(circle, stream(reynolds)));
      expect(lying.regime).toBe(free.regime);
      expect(Math.abs(lying.dragCoefficient / free.dragCoefficient - 1)).toBeLessThan(0.03);
      expect(Math.abs((2 * lying.strouhal) / free.strouhal - 1)).toBeLessThan(0.03);
      expect(Math.abs(lying.basePressureCoefficient - free.basePressureCoefficient)).toBeLessThan(0.05);
    }
  });

  it("lying on it: one separation, on the upper side; no layer beneath, water at rest ahead of the contact", () => {
    const nodes = nodesOf({ family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.008 }, 240);
    const section = unwrap(prepareSection(nodes, 0, undefined, 0));
    const state = first(solveCondition(section, stream(6e4)));
    expect(state.lower.layer.arc).toHaveLength(0);
    expect(state.lower.separationArc).toBe(0);
    expect(state.upper.layer.arc.length).toBeGreaterThan(20);
    const contact = section.floor?.contact;
    const middle = Math.round(contact?.middle ?? Number.NaN);
    expect(Math.abs(state.surfaceVelocity[middle])).toBeLessThan(0.05);
    expect(state.pressureCoefficient[middle - 1]).toBeCloseTo(1, 2);
    // The flat face: from one bottom edge radius to the other.
    expect(nodes.x[Math.ceil(contact?.front ?? 0)]).toBeLessThan(-0.028);
    expect(nodes.x[Math.floor(contact?.rear ?? 0)]).toBeGreaterThan(0.028);
  });

  it("any gap ends in states of finite numbers or in a problem with its reason, never in an exception", () => {
    for (const incidence of [-0.3, 0, 0.2]) {
      for (const gap of [0, 0.02, 0.1, 0.4, 1.5]) {
        const nodes = nodesOf({ family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.005 }, 100);
        const section = unwrap(prepareSection(nodes, incidence, undefined, gap));
        expect(section.symmetric).toBe(false);
        const outcome = solveCondition(section, stream(5e4));
        for (const state of outcome.states) expect(everyNumber(state).every(Number.isFinite)).toBe(true);
        if (outcome.states.length === 0) expect(outcome.problem?.message).toContain(closureNearFloor(gap));
        else expect(outcome.rising).toBe(0);
      }
    }
  });

  it("prepareSection hands on what a gap breaks", () => {
    const refused = prepareSection(nodesOf({ family: "circle", diameter: 1 }, 40), 0, undefined, 0.005);
    expect(refused.ok).toBe(false);
    if (!refused.ok) expect(refused.problem.code).toBe("floor-gap");
  });
});

describe("floorNotes(gapRatio)", () => {
  it("say outside, do not rely on it below gap / D 0.5, and that nothing was checked above", () => {
    for (const gap of [0, 0.02, 0.3, 0.49]) expect(floorNotes(gap).join(" ")).toContain("outside, do not rely on it");
    for (const gap of [0.5, 3]) {
      expect(floorNotes(gap).join(" ")).not.toContain("outside");
      expect(floorNotes(gap).join(" ")).toContain("not checked above a floor");
    }
    expect(floorNotes(0).join(" ")).toContain("lift");
    expect(floorNotes(0.1).join(" ")).toContain("no meaning");
  });
});
