import { describe, expect, it } from "vitest";
import type { SectionState } from "../../shared/engine/solution";
import { traceDragCurve } from "../../shared/engine/solve/dragCurve";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { degrees, prepared, quietCondition } from "./sections";

const circle = prepared({ family: "circle", diameter: 0.08 }, 200);
const steps = 61;
const reynolds = Array.from({ length: steps }, (_, i) => 1e4 * 10 ** ((3 * i) / (steps - 1)));
const curve = traceDragCurve(
  circle,
  reynolds.map((Re) => quietCondition(Re)),
);
const branch = (which: "rising" | "falling"): SectionState[] =>
  curve.map((outcome) => outcome.states[outcome[which] ?? Number.NaN]);
const rising = branch("rising");
const falling = branch("falling");

describe("smooth cylinder (ks/D 1e-5), Tu 0.1 %, Re 1e4 to 1e7", () => {
  it("has a state at every Reynolds number on both branches, and no problem", () => {
    for (const outcome of curve) expect(outcome.problem).toBeNull();
    for (const state of [...rising, ...falling]) expect(state.dragCoefficient).toBeGreaterThan(0);
  });

  it("Re 2e4 to 2e5: Cd 1.10 to 1.30, S 0.18 to 0.22, laminar separation (Wieselsberger 1921, Roshko 1954, from memory)", () => {
    reynolds.forEach((Re, i) => {
      if (Re < 2e4 || Re > 2e5) return;
      for (const state of [rising[i], falling[i]]) {
        expect(state.dragCoefficient).toBeGreaterThan(1.1);
        expect(state.dragCoefficient).toBeLessThan(1.3);
        expect(state.strouhal).toBeGreaterThan(0.18);
        expect(state.strouhal).toBeLessThan(0.22);
        expect(state.regime).toBe("subcritical");
        expect(state.lower.state).toBe("laminar separation");
      }
    });
  });

  it("Re 1e5: base pressure -1.0 to -1.3 and separation at 76 to 86 degrees (Achenbach 1968: 78; measured Cpb -1.2, from memory)", () => {
    const [state] = solveCondition(circle, quietCondition(1e5)).states;
    expect(state.basePressureCoefficient).toBeGreaterThan(-1.3);
    expect(state.basePressureCoefficient).toBeLessThan(-1.0);
    expect(degrees(state.lower.separationAngle)).toBeGreaterThan(76);
    expect(degrees(state.lower.separationAngle)).toBeLessThan(86);
  });

  it("drag crisis: a rising speed passes Cd 0.7 between Re 2.5e5 and 5e5, and Cd is below 0.45 after it up to 1e6", () => {
    const after = rising.findIndex((state) => state.dragCoefficient < 0.7);
    expect(reynolds[after - 1]).toBeGreaterThan(2.5e5);
    expect(reynolds[after]).toBeLessThan(5e5);
    for (let i = after; reynolds[i] < 1e6; i++) expect(rising[i].dragCoefficient).toBeLessThan(0.45);
  });

  it("behind the crisis the layers separate beyond 120 degrees from a bubble, with S above 0.25 (measured 0.46, from memory)", () => {
    const state = rising[reynolds.findIndex((Re) => Re > 7e5)];
    expect(state.regime).toBe("supercritical");
    expect(state.lower.bubble).not.toBeNull();
    expect(degrees(state.lower.separationAngle)).toBeGreaterThan(120);
    expect(state.strouhal).toBeGreaterThan(0.25);
  });

  it("climbs again: at Re 5e6 transition is attached and Cd lies between 0.45 and 0.85 (measured 0.52 to 0.76)", () => {
    const state = rising[reynolds.findIndex((Re) => Re > 5e6)];
    expect(state.regime).toBe("transcritical");
    expect(state.lower.bubble).toBeNull();
    expect(state.dragCoefficient).toBeGreaterThan(0.45);
    expect(state.dragCoefficient).toBeLessThan(0.85);
  });

  it("hysteresis: near the crisis a falling speed sits on a lower drag than a rising one", () => {
    const differing = reynolds.filter((_, i) => Math.abs(rising[i].dragCoefficient - falling[i].dragCoefficient) > 0.1);
    expect(differing.length).toBeGreaterThan(0);
    for (const Re of differing) {
      expect(Re).toBeGreaterThan(1.5e5);
      expect(Re).toBeLessThan(6e5);
      const i = reynolds.indexOf(Re);
      expect(falling[i].dragCoefficient).toBeLessThan(rising[i].dragCoefficient);
    }
  });

  it("one-sided states are reported near the crisis, as critical and with lift (Schewe 1983: |CL| 1 to 1.3, from memory; kept between 0.5 and 2.5)", () => {
    const oneSided = curve.flatMap((outcome, i) =>
      outcome.states.filter((state) => state.oneSided).map((state) => ({ Re: reynolds[i], state })),
    );
    expect(oneSided.length).toBeGreaterThan(0);
    for (const { Re, state } of oneSided) {
      expect(Re).toBeGreaterThan(1.5e5);
      expect(Re).toBeLessThan(6e5);
      expect(state.regime).toBe("critical");
      expect(state.lower.state).not.toBe(state.upper.state);
      expect(Math.abs(state.liftCoefficient)).toBeGreaterThan(0.5);
      expect(Math.abs(state.liftCoefficient)).toBeLessThan(2.5);
      // The side that separates later sucks: the lift points to it.
      const later = state.upper.separationAngle > state.lower.separationAngle ? 1 : -1;
      expect(Math.sign(state.liftCoefficient)).toBe(later);
    }
  });

  it("symmetric states have no lift and equal sides", () => {
    for (const outcome of curve) {
      for (const state of outcome.states) {
        if (state.oneSided) continue;
        expect(state.liftCoefficient).toBe(0);
        expect(state.upper.separationAngle).toBe(state.lower.separationAngle);
      }
    }
  });

  it("friction is a small share of the drag: below 4 % at Re 2e4 to 2e5 (Achenbach 1968: about 2 %, from memory), below 8 % everywhere", () => {
    reynolds.forEach((Re, i) => {
      const share = rising[i].frictionDragCoefficient / rising[i].dragCoefficient;
      expect(share).toBeGreaterThan(0);
      expect(share).toBeLessThan(Re >= 2e4 && Re <= 2e5 ? 0.04 : 0.08);
    });
  });
});

describe("turbulence of the stream", () => {
  it("brings the crisis forward, the more the stronger it is", () => {
    const crisis = (turbulenceIntensity: number) => {
      const outcomes = traceDragCurve(
        circle,
        Array.from({ length: 31 }, (_, i) => ({
          ...quietCondition(3e4 * 10 ** ((1.3 * i) / 30)),
          turbulenceIntensity,
        })),
      );
      const i = outcomes.findIndex(({ states, rising: at }) => states[at ?? Number.NaN].dragCoefficient < 0.7);
      return 3e4 * 10 ** ((1.3 * i) / 30);
    };
    const critical = [0.001, 0.005, 0.01, 0.02].map(crisis);
    for (let i = 1; i < critical.length; i++) expect(critical[i]).toBeLessThan(critical[i - 1]);
  });
});
