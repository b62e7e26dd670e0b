import { describe, expect, it } from "vitest";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { type SolvedSection, solveSection } from "../../shared/engine/section/solveSection";

const ellipse: SectionSpec = { family: "ellipse", length: 0.1, height: 0.06 };
const stream = { reynolds: 2e5, sandGrainRoughnessRatio: 1e-5, turbulenceIntensity: 0.005 };

function solved(place: { readonly incidence?: number; readonly floorGap?: number }): SolvedSection {
  const found = solveSection({ section: ellipse, panelCount: 80, layerMethod: "textbook", ...place }, stream);
  if (!found.ok) throw new Error(found.problem.message);
  return found.value;
}

describe("a section solved with textbook layers", () => {
  it("at incidences of opposite sign has the same drag, opposite lift and its sides swapped, 1e-3", () => {
    const [up, down] = [0.1, -0.1].map((incidence) => solved({ incidence }).states[0]);
    expect(Math.abs(up.dragCoefficient / down.dragCoefficient - 1)).toBeLessThan(1e-3);
    expect(Math.abs(up.liftCoefficient + down.liftCoefficient)).toBeLessThan(1e-3);
    expect(Math.abs(up.upper.separationAngle - down.lower.separationAngle)).toBeLessThan(1e-3);
  });

  it("keeps the turbulent layer by Head up to H 2.4 in its profile, and Thwaites' H 2 to 3.55 ahead of it", () => {
    const { states } = solved({});
    const { layer, state } = states[0].upper;
    expect(state).toBe("separation bubble");
    const shapes = (kind: number) => [...layer.shapeFactor].filter((_, i) => layer.layerKind[i] === kind);
    // Thwaites (1949), table of H: 2.0 at lambda 0.25 to 3.55 at separation; White's fit is within 0.035 of it.
    for (const H of shapes(0)) {
      expect(H).toBeGreaterThan(2 - 0.035);
      expect(H).toBeLessThan(3.55 + 0.035);
    }
    const turbulent = shapes(2);
    expect(turbulent.length).toBeGreaterThan(5);
    expect(Math.max(...turbulent)).toBeLessThan(2.4 + 1e-9);
    expect(turbulent[turbulent.length - 1]).toBeGreaterThan(2.2);
  });

  it("is solved near a floor and on it as well, and its band is not that of a checked section anywhere", () => {
    for (const floorGap of [0.05, 0]) {
      const { row, states } = solved({ floorGap });
      expect(states.length).toBeGreaterThan(0);
      expect(row).toMatchObject({
        converged: true,
        layerMethod: "textbook",
        applicability: "outside: do not rely on it",
      });
    }
  });
});
