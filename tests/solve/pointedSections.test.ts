import { describe, expect, test } from "vitest";
import { gradeNodes } from "../../shared/engine/geometry/gradedNodes";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { solveCondition } from "../../shared/engine/solve/solveCondition";

function solve(spec: SectionSpec, reynolds: number) {
  const contour = buildContour(spec);
  if (!contour.ok) throw new Error(contour.problem.message);
  const nodes = gradeNodes(contour.value, 200);
  if (!nodes.ok) throw new Error(nodes.problem.message);
  const section = prepareSection(nodes.value, 0);
  if (!section.ok) throw new Error(section.problem.message);
  return solveCondition(section.value, { reynolds, sandGrainRoughnessRatio: 1e-5, turbulenceIntensity: 0.002 });
}

describe("pointed and polygonal sections", () => {
  test("a wedge with its apex to the stream sheds from its rear corners, not from the speed dip behind its nose", () => {
    const { states } = solve(
      { family: "roundedTriangle", length: 1, height: 1, cornerRadius: 0.05, apex: "forward" },
      5e4,
    );
    expect(states.length).toBeGreaterThan(0);
    for (const state of states) {
      expect(state.upper.separationAngle).toBeGreaterThan(Math.PI / 2);
      expect(state.dragCoefficient).toBeGreaterThan(1);
      expect(state.basePressureCoefficient).toBeLessThan(0);
    }
  });

  test("the same wedge with its flat side to the stream drags more (common practice, no source)", () => {
    const forward = solve(
      { family: "roundedTriangle", length: 1, height: 1, cornerRadius: 0.05, apex: "forward" },
      5e4,
    );
    const rearward = solve(
      { family: "roundedTriangle", length: 1, height: 1, cornerRadius: 0.05, apex: "rearward" },
      5e4,
    );
    expect(rearward.states[0].dragCoefficient).toBeGreaterThan(forward.states[0].dragCoefficient);
  });
});
